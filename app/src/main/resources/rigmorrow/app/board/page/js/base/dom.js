/** Makes elements. Data only ever becomes text or an attribute, never markup. */

/**
 * @typedef {any} Child a node, text, a number, a list of these; null, undefined and false stand for nothing
 */

/**
 * Makes an element.
 *
 * @param {string} tag name, such as "button"
 * @param {Record<string, any>} [props] "class", "text", "data" (object), "on" (object of listeners),
 *     "prop" (object of DOM properties); everything else becomes an attribute. false, null and
 *     undefined leave an attribute out, true makes it empty.
 * @param {...Child} children appended in order
 * @returns {any} the element
 */
export function el(tag, props = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(props)) {
    if (name === 'class') {
      made.className = value;
    } else if (name === 'text') {
      made.textContent = value;
    } else if (name === 'data') {
      Object.assign(made.dataset, value);
    } else if (name === 'on') {
      for (const [event, listener] of Object.entries(value)) {
        made.addEventListener(event, /** @type {EventListener} */ (listener));
      }
    } else if (name === 'prop') {
      Object.assign(made, value);
    } else if (value === true) {
      made.setAttribute(name, '');
    } else if (value !== false && value !== null && value !== undefined) {
      made.setAttribute(name, String(value));
    }
  }
  put(made, ...children);
  return made;
}

/**
 * Appends children; nothing for null, undefined and false.
 *
 * @param {Element} parent
 * @param {...Child} children
 */
export function put(parent, ...children) {
  for (const child of children.flat(Infinity)) {
    if (child !== null && child !== undefined && child !== false) {
      parent.append(/** @type {any} */ (child));
    }
  }
}

/**
 * Puts children in place of what there is.
 *
 * @param {Element} parent
 * @param {...Child} children
 */
export function fill(parent, ...children) {
  parent.replaceChildren();
  put(parent, ...children);
}

/**
 * An element of the page that must be there.
 *
 * @param {string} id
 * @returns {any}
 */
export function byId(id) {
  const found = document.getElementById(id);
  if (!found) {
    throw new Error(`The page has no #${id}.`);
  }
  return found;
}

const SVG = 'http://www.w3.org/2000/svg';

/**
 * Makes an SVG element.
 *
 * @param {string} tag
 * @param {Record<string, any>} [attributes]
 * @param {...Child} children
 * @returns {any}
 */
export function svg(tag, attributes = {}, ...children) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== undefined && value !== false) {
      made.setAttribute(name, String(value));
    }
  }
  put(made, ...children);
  return made;
}

/**
 * A picture from the page's own set (symbols in index.html), hidden from those who listen.
 *
 * @param {string} name of the symbol, without "i-"
 * @returns {SVGElement}
 */
export function icon(name) {
  return svg('svg', {class: 'icon', 'aria-hidden': 'true', focusable: 'false'},
    svg('use', {href: `#i-${name}`}));
}

/** True while somebody writes into a field, where single keys are text. */
export function writing(target) {
  return target instanceof HTMLElement
    && (target.isContentEditable || /^(TEXTAREA|SELECT)$/.test(target.tagName)
      || (target.tagName === 'INPUT' && !/^(button|checkbox|radio|submit|reset|file|range)$/
        .test(/** @type {HTMLInputElement} */ (target).type)));
}

/** Tells the page's parts of what happened, so that none needs to know the others. */

const target = new EventTarget();

/**
 * @param {string} name such as "board"
 * @param {any} [detail]
 */
export function tell(name, detail) {
  target.dispatchEvent(new CustomEvent(name, {detail}));
}

/**
 * @param {string} name
 * @param {(detail: any) => void} listener
 */
export function hear(name, listener) {
  target.addEventListener(name, event => listener(/** @type {CustomEvent} */ (event).detail));
}

/** Words in the chart that are no bars: names of rows, closed times and breaks. */

import {el} from '../base/dom.js';

/** The name of a row, with a second line. @param {any} row */
export function rowLabel(row) {
  if (!row?.name) {
    return '';
  }
  return el('div', {class: 'row-name', data: {row: row.id}},
    el('strong', {text: row.name, title: row.name}), el('span', {text: row.below}));
}

/** What a stretch of ground is. @param {import('./rows.js').Ground} ground */
export function groundLabel(ground) {
  return el('span', {class: 'ground-name', text: ground.kind === 'break' ? 'break' : 'closed'});
}

/** Keeps the text of a bar that begins left of the window in sight. */
export function indent(made, pixels) {
  const line = made.firstElementChild;
  if (line && (pixels > 0 || line.style.paddingLeft)) {
    line.style.paddingLeft = pixels > 0 ? `${Math.round(pixels) + 3}px` : '';
  }
}

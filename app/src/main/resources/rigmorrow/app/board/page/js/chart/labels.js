/** Words in the chart: names of rows, and the text of bars that begin outside the window. */

import {el} from '../base/dom.js';

/** The name of a row, with a second line. @param {any} row */
export function rowLabel(row) {
  if (!row?.name) {
    return '';
  }
  return el('div', {class: 'row-name', data: {row: row.id}},
    el('strong', {text: row.name, title: row.name}), el('span', {text: row.below}));
}

/** Keeps the text of a bar that begins left of the window in sight. */
export function indent(made, pixels) {
  const line = made.firstElementChild;
  if (line && (pixels > 0 || line.style.paddingLeft)) {
    line.style.paddingLeft = pixels > 0 ? `${Math.round(pixels) + 3}px` : '';
  }
}

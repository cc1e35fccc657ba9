/** Long tables: rows are drawn a few hundred at a time, columns sort by their headers. */

import {el} from '../base/dom.js';

const CHUNK = 250;

/**
 * Fills a table's body; what does not fit into the first go follows when the browser has time.
 *
 * @param {HTMLTableSectionElement & {turn?: number}} body
 * @param {any[]} rows
 * @param {(row: any, index: number) => HTMLElement} draw
 * @param {boolean} [atOnce] true to draw all now, as for print
 */
export function fillRows(body, rows, draw, atOnce = false) {
  const turn = (body.turn ?? 0) + 1;
  body.turn = turn;
  body.replaceChildren();
  body.closest('table')?.setAttribute('aria-rowcount', String(rows.length + 1));
  let at = 0;
  const more = () => {
    if (body.turn !== turn) {
      return;
    }
    const part = document.createDocumentFragment();
    const to = atOnce ? rows.length : Math.min(rows.length, at + CHUNK);
    for (; at < to; at++) {
      part.append(draw(rows[at], at));
    }
    body.append(part);
    if (at < rows.length) {
      setTimeout(more);
    }
  };
  more();
}

/**
 * The heading of a column that sorts.
 *
 * @param {{name: string, key: string, figure?: boolean, more?: string}} column
 * @param {{key: string, up: boolean}} order how the table is sorted
 * @param {(key: string) => void} sort
 */
export function sortHead(column, order, sort) {
  const on = order.key === column.key;
  return el('th', {
    'scope': 'col', 'class': `${column.figure ? 'figure ' : ''}${column.more ?? ''}`,
    'aria-sort': on ? order.up ? 'ascending' : 'descending' : 'none',
  }, el('button', {
    'type': 'button', 'class': 'sorter', 'data': {sort: column.key}, 'on': {click: () => sort(column.key)},
  }, column.name, el('span', {'aria-hidden': 'true', 'class': 'arrow', 'text': on ? order.up ? '▲' : '▼' : '↕'})));
}

/**
 * Compares by a value, null last whichever way.
 *
 * @param {(row: any) => any} value
 * @param {boolean} up
 */
export function by(value, up) {
  return (one, other) => {
    const a = value(one);
    const b = value(other);
    if (a === null || b === null) {
      return (a === null ? 1 : 0) - (b === null ? 1 : 0);
    }
    const way = typeof a === 'string' ? a.localeCompare(b, 'en', {numeric: true}) : a - b;
    return up ? way : -way;
  };
}

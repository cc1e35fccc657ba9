/** Draws charts as the report's files have them: the same paths, in the colours of the page. */

import {el, svg} from '../base/dom.js';

function drawing(width, height, layers) {
  return svg('svg', {'viewBox': `0 0 ${width} ${height}`, 'preserveAspectRatio': 'none', 'aria-hidden': 'true', 'focusable': 'false'},
    layers.map(layer => svg('path', {d: layer.path, class: `ink-${layer.ink}`})));
}

/** Numbers along an axis; side is "left" or "top". */
function axis(marks, side, css) {
  return el('div', {'class': css, 'aria-hidden': 'true'}, marks.map(mark => {
    const span = el('span', {text: mark.text});
    span.style[side] = `${mark.percent}%`;
    return span;
  }));
}

/**
 * Lanes one below the other; each has its value in words.
 *
 * @param {any} chart a LanesView
 * @param {string} more class
 */
export function lanes(chart, more = '') {
  return el('figure', {class: `lanes ${more}`},
    el('figcaption', {text: chart.title}),
    el('table', {'aria-label': chart.spoken},
      el('tbody', {}, chart.lanes.map(lane => el('tr', {},
        el('th', {scope: 'row', text: lane.label}),
        el('td', {class: 'drawing', role: 'presentation'}, drawing(chart.width, chart.height, lane.layers)),
        el('td', {class: 'value', text: lane.value}))))),
    el('div', {class: 'ruler'}, axis(chart.axis, 'left', 'across')),
    el('p', {class: 'hint', text: chart.unit}));
}

/**
 * A drawing with two axes; what it shows stands in a table elsewhere.
 *
 * @param {any} chart a PlaneView
 */
export function plane(chart) {
  return el('figure', {class: 'plane'},
    el('figcaption', {text: chart.title}),
    el('div', {'class': 'field-of', 'role': 'img', 'aria-label': `${chart.spoken}. The same as a table below.`},
      axis(chart.up, 'top', 'up'), drawing(chart.width, chart.height, chart.layers), axis(chart.across, 'left', 'across')),
    el('p', {class: 'hint', text: `${chart.base}; ${chart.scenario}`}));
}

/**
 * A table whose first cells are names.
 *
 * @param {any} table a FigureTableView
 * @param {string} title said to those who listen
 * @param {string} [more] class; "short" for one that scrolls
 */
export function figureTable(table, title, more = '') {
  return el('div', {'class': `scroller ${more}`, 'tabindex': '0', 'role': 'region', 'aria-label': title}, el('table', {class: 'figures-of'},
    el('thead', {}, el('tr', {}, table.heads.map((text, i) => el('th', {scope: 'col', class: i ? 'figure' : '', text})))),
    el('tbody', {}, table.rows.map(row => el('tr', {}, row.map((text, i) =>
      el(i ? 'td' : 'th', i ? {class: 'figure', text} : {scope: 'row', text})))))));
}

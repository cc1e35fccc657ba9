/** What the bars' patterns, letters and marks mean. */

import {byId, el, fill, icon} from '../base/dom.js';
import {PARTS} from '../chart/rows.js';

/** Writes the legend. */
export function startLegend() {
  const parts = Object.entries(PARTS).map(([part, {letter, name, says}]) =>
    el('li', {}, el('span', {class: `swatch part ${part}`, 'aria-hidden': 'true'}, el('b', {text: letter})), `${name}: ${says}`));
  const mark = (cls, picture, text) =>
    el('li', {}, el('span', {class: `swatch ${cls}`, 'aria-hidden': 'true'}, picture), text);
  fill(byId('legend-list'), parts,
    mark('is-late', null, 'Late: hatched, with the minutes'),
    mark('is-pin', icon('pin'), 'Pinned'),
    mark('is-must', icon('must'), 'Must be in time'),
    mark('is-promise', null, 'Promise of the chosen job'),
    mark('is-ghost', null, 'Where a proposal puts it'),
    mark('break', null, 'Break'),
    mark('closed', null, 'Closed'));
}

/** The keys, in a dialog. */

import {byId, el, fill} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {setSingleKeys, singleKeys} from '../touch/keys.js';

/** @type {[string, string[][]][]} */
const KEYS = [
  ['In the chart', [
    ['← →', 'Job before, job after'], ['↑ ↓', 'Row above, row below'], ['Home End', 'First and last of the row'],
    ['Enter', 'Open the job\'s panel'], ['M', 'Move the job: arrows choose place and rig'],
    ['Enter', 'while moving: keep'], ['Shift Enter', 'while moving: keep and pin'], ['Esc', 'while moving: leave it where it is'],
    ['Delete', 'Leave the job out'], ['Shift ← →', 'Earlier, later'], ['PgUp PgDn', 'Much earlier, much later'],
  ]],
  ['Everywhere', [
    ['/', 'Find a job'], ['+ -', 'Zoom in, zoom out'], ['0', 'Fit the day'], ['Ctrl Z', 'Undo'], ['Ctrl Y', 'Redo, also Ctrl Shift Z'],
    ['Esc', 'Drop what is proposed'], ['?', 'This list'],
  ]],
  ['With the mouse', [
    ['Drag a bar', 'Move the job; the cost is shown before you let go'], ['Drag the ground', 'Earlier, later'], ['Ctrl wheel', 'Zoom'], ['Wheel', 'Up and down the rows'],
  ]],
];

const PLAIN = new Set(['Drag', 'Wheel', 'a', 'bar', 'the', 'ground', 'wheel']);

function keys(text) {
  return text.split(' ').flatMap((key, i) => [i ? ' ' : null, PLAIN.has(key) ? key : el('kbd', {text: key})]);
}

/** Wires the dialog. */
export function startHelp() {
  const dialog = byId('help');
  const single = el('input', {id: 'single-keys', type: 'checkbox', on: {change: event => setSingleKeys(event.target.checked)}});
  fill(dialog, el('h2', {id: 'help-head', text: 'Keys'}),
    KEYS.map(([title, list]) => [el('h3', {class: 'apart', text: title}), el('dl', {class: 'keys'}, list.map(([key, text]) =>
      [el('dt', {}, keys(key)), el('dd', {text})]))]),
    el('p', {class: 'apart'}, el('label', {}, single, 'Single letters and signs are keys')),
    el('form', {method: 'dialog', class: 'actions'}, el('button', {class: 'main', text: 'Close'})));
  const open = () => {
    single.checked = singleKeys();
    if (!dialog.open) {
      dialog.showModal();
    }
  };
  byId('help-open').addEventListener('click', open);
  hear('help', open);
}

/**
 * Closed times and breaks behind the bars. Each row has one sheet as long as the plan, with its
 * stretches at shares of it: moving the window moves a sheet a row, and nothing is measured.
 */

import {el} from '../base/dom.js';
import {desk} from '../plan/desk.js';

/** @type {Map<string, HTMLElement>} sheets by row */
const sheets = new Map();
let key = '';

/**
 * Draws the stretches of every row.
 *
 * @param {import('./rows.js').Ground[]} grounds
 */
export function layGrounds(grounds) {
  const now = JSON.stringify(grounds);
  if (now === key) {
    return;
  }
  key = now;
  sheets.forEach(sheet => sheet.remove());
  sheets.clear();
  const whole = desk.board.horizonSeconds;
  for (const ground of grounds) {
    let sheet = sheets.get(ground.row);
    if (!sheet) {
      sheet = el('div', {'class': 'grounds', 'aria-hidden': 'true'});
      sheets.set(ground.row, sheet);
    }
    const made = el('div', {class: `ground ${ground.kind}`}, el('span', {text: ground.kind}));
    made.style.left = `${100 * ground.start / whole}%`;
    made.style.width = `${100 * (ground.end - ground.start) / whole}%`;
    sheet.append(made);
  }
}

/** Puts the sheets where the window has them. @param {any} timeline the vis-timeline */
export function placeGrounds(timeline) {
  const {toScreen} = timeline.body.util;
  const left = toScreen(new Date(desk.clock.millis(0)));
  const width = toScreen(new Date(desk.clock.millis(desk.board.horizonSeconds))) - left;
  for (const [row, sheet] of sheets) {
    const holder = timeline.itemSet.groups[row]?.dom?.background;
    if (holder && sheet.parentNode !== holder) {
      holder.append(sheet);
    }
    sheet.style.left = `${left}px`;
    sheet.style.width = `${width}px`;
  }
}

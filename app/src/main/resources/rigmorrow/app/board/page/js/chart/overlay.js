/**
 * Things drawn over the rows that are no bars: ghosts of a proposal, the place where a job would go,
 * a promise. They are put into the rows beside vis-timeline's items, because those are measured one
 * by one when they are added.
 */

import {hear} from '../base/bus.js';
import {desk} from '../plan/desk.js';
import {chart} from './chart.js';

/**
 * @typedef {object} Mark
 * @property {string} row
 * @property {number} start second
 * @property {number} end second
 * @property {HTMLElement} made
 */

/** Pixels below which a mark has no room for its text. */
const SLIM = 46;
/** Pixels that the words of a mark need to its right. */
const ROOM = 170;

/** @type {Map<string, Mark[]>} */
const layers = new Map();

/**
 * Shows marks in place of those of the same name.
 *
 * @param {string} name
 * @param {Mark[]} marks empty to show none
 */
export function lay(name, marks) {
  layers.get(name)?.forEach(mark => mark.made.remove());
  layers.set(name, marks);
  marks.forEach(mark => mark.made.classList.add('over'));
  place();
}

/** Puts every mark where the window has it now. */
function place() {
  const timeline = chart();
  if (!timeline) {
    return;
  }
  const {groups} = timeline.itemSet;
  const {toScreen} = timeline.body.util;
  const {width} = timeline.body.domProps.center;
  for (const marks of layers.values()) {
    for (const mark of marks) {
      const holder = groups[mark.row]?.dom?.foreground;
      if (!holder) {
        mark.made.remove();
        continue;
      }
      if (mark.made.parentNode !== holder) {
        holder.append(mark.made);
      }
      const left = toScreen(new Date(desk.clock.millis(mark.start)));
      const right = toScreen(new Date(desk.clock.millis(mark.end)));
      mark.made.style.left = `${left}px`;
      mark.made.style.width = `${Math.max(0, right - left)}px`;
      mark.made.classList.toggle('slim', right - left < SLIM);
      mark.made.classList.toggle('flip', left > width - ROOM);
    }
  }
}

hear('window', place);
hear('chart-changed', place);

/** What stretch of time a planned day takes. */

import {desk} from '../plan/desk.js';

/**
 * From the first to the last thing of a planned day, with a little room.
 *
 * @param {number} day 0 for the first
 */
export function dayWindow(day) {
  const {board, clock} = desk;
  const starts = clock.dayStarts();
  const [from, to] = [starts[day], starts[day + 1]];
  let first = Infinity;
  let last = -Infinity;
  const look = (start, end) => {
    if (end > from && start < to) {
      first = Math.min(first, Math.max(start, from));
      last = Math.max(last, Math.min(end, to));
    }
  };
  board.jobs.forEach(job => job.placing && look(job.placing.start, job.placing.end));
  if (first === Infinity) {
    board.rigs.forEach(rig => rig.open.forEach(span => look(span.start, span.end)));
  }
  if (first === Infinity) {
    return {start: from, end: to};
  }
  const room = Math.max(300, (last - first) * 0.015);
  return {start: first - room, end: last + room};
}

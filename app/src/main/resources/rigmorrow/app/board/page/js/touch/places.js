/** Places on a rig: before, between and behind its other jobs. Order only; times come from the server. */

import {desk} from '../plan/desk.js';

/** Placings of a rig's jobs without one of them, in order. */
export function others(rig, job) {
  return (desk.rigs.get(rig)?.jobs ?? []).filter(id => id !== job).map(id => desk.jobs.get(id)?.placing).filter(Boolean);
}

/**
 * The place that is meant by putting a bar down at a time: before the first job whose middle is later.
 *
 * @param {string} rig
 * @param {string} job
 * @param {number} second
 */
export function placeAt(rig, job, second) {
  return others(rig, job).filter(placing => (placing.start + placing.end) / 2 <= second).length;
}

/** The second at which a place begins in the plan as it is: where the job before it ends. */
export function placeStart(rig, job, place) {
  const list = others(rig, job);
  if (place > 0) {
    return list[place - 1].end;
  }
  const open = desk.rigs.get(rig)?.open ?? [];
  const first = list[0]?.start ?? open[0]?.start ?? 0;
  const span = open.find(one => one.start <= first && first < one.end);
  return span ? Math.min(span.start, first) : first;
}

/** "R2, place 4 of 21, after J0012". */
export function placeWords(rig, job, place) {
  const list = others(rig, job);
  const beside = place > 0 ? `after ${list[place - 1].job}` : list[0] ? `before ${list[0].job}` : 'alone';
  return `${rig}, place ${place + 1} of ${list.length + 1}, ${beside}`;
}

/** True where a job stands at a place already. */
export function isThere(job, rig, place) {
  const placing = desk.jobs.get(job)?.placing;
  return Boolean(placing) && placing.rig === rig && placing.place === place;
}

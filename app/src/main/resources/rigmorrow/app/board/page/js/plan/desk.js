/** What the page knows of the board: the last BoardView, the selection, and ways to find things. */

import {read} from '../base/api.js';
import {hear, tell} from '../base/bus.js';
import {FloorClock} from '../base/time.js';

export const desk = {
  /** @type {any} the BoardView; null before the first answer */
  board: null,
  /** @type {FloorClock} */
  clock: /** @type {any} */ (null),
  /** @type {Map<string, any>} JobView by id */
  jobs: new Map(),
  /** @type {Map<string, any>} RigView by id */
  rigs: new Map(),
  /** @type {Map<string, any>} OperatorView by id */
  operators: new Map(),
  /** @type {string | null} id of the selected job */
  selected: null,
  /** Requests that change the board and are not answered yet. */
  changing: 0,
};

/** Takes a board in place of the one there is, unless it is older. */
export function take(board) {
  if (desk.board && (board.revision < desk.board.revision || board.change < desk.board.change)) {
    return;
  }
  performance.mark('board-taken');
  desk.board = board;
  desk.clock = new FloorClock(board.zone, board.originMillis, board.horizonSeconds, board.days);
  desk.jobs = new Map(board.jobs.map(job => [job.id, job]));
  desk.rigs = new Map(board.rigs.map(rig => [rig.id, rig]));
  desk.operators = new Map(board.operators.map(operator => [operator.id, operator]));
  if (desk.selected && !desk.jobs.has(desk.selected)) {
    desk.selected = null;
  }
  tell('board', board);
  document.body.dataset.revision = String(board.revision);
}

let loading = null;

/** Asks the server for the board as it is now; one request at a time. */
export function load() {
  loading ??= read('/api/board').then(take).finally(() => {
    loading = null;
  });
  return loading;
}

/**
 * Selects a job everywhere.
 *
 * @param {string | null} id
 * @param {{show?: boolean, focus?: boolean, open?: boolean}} [how] show: bring it into the chart's
 *     window; focus: put the focus on its bar; open: show the job's panel
 */
export function select(id, how = {}) {
  desk.selected = id;
  tell('select', {id, ...how});
}

/** The name of a rig with its id: "R2 Glass table". */
export function rigName(id) {
  const rig = desk.rigs.get(id);
  return rig && rig.name !== id ? `${id} ${rig.name}` : id;
}

/** Names of operators, in the order given. */
export function people(ids) {
  return ids.map(id => desk.operators.get(id)?.name ?? id);
}

/** True when nothing may be touched, because a search runs. */
export function locked() {
  return desk.board?.searching === true;
}

/** What a job is, in one sentence, for those who listen. */
export function spoken(job) {
  const {clock} = desk;
  const parts = [`${job.id} ${job.name}`];
  const placing = job.placing;
  if (placing) {
    const rig = desk.rigs.get(placing.rig);
    parts.push(`rig ${rigName(placing.rig)}`, `place ${placing.place + 1} of ${rig?.jobs.length ?? '?'}`,
      clock.span(placing.start, placing.end));
  } else {
    parts.push('left out');
  }
  if (job.promise) {
    parts.push(`${job.promise.must ? 'must be there by' : 'promised for'} ${clock.at(job.promise.due)}`);
  }
  return parts;
}

hear('changing', by => {
  desk.changing += by;
});

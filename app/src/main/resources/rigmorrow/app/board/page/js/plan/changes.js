/** Every change that goes to the server, and what happens when the board was changed meanwhile. */

import {send} from '../base/api.js';
import {hear, tell} from '../base/bus.js';
import {desk, load, take} from './desk.js';

let waiting = 0;
let newer = false;

/**
 * Sends a change and takes the board that comes back.
 *
 * @param {string} path
 * @param {object} [body] the revision is added
 * @returns {Promise<any>} the BoardView; null when the change was refused as stale, which the page
 *     has told by then
 * @throws {import('../base/api.js').Refusal} for every other refusal
 */
export async function change(path, body = {}) {
  waiting++;
  try {
    const board = await send(path, {revision: desk.board.revision, ...body});
    take(board);
    return board;
  } catch (failure) {
    await orStale(failure);
    return null;
  } finally {
    waiting--;
    if (waiting === 0 && newer) {
      newer = false;
      fresh();
    }
  }
}

/**
 * Tells of a stale touch and loads the board; throws anything else on.
 *
 * @param {any} failure
 */
export async function orStale(failure) {
  if (failure?.status !== 409) {
    throw failure;
  }
  tell('drop');
  await load();
  tell('stale', {message: failure.message, since: failure.since});
}

let proposing = () => false;

/** @param {() => boolean} asked tells whether a proposal is open */
export function whetherProposing(asked) {
  proposing = asked;
}

let seen = {revision: 0, change: 0};

/** Loads the board, unless somebody is in the middle of a proposal: they are told. */
function fresh() {
  const board = desk.board ?? {revision: -1, change: -1};
  if (seen.revision <= board.revision && seen.change <= board.change && !stateChanged()) {
    return;
  }
  if (proposing() && seen.revision > board.revision) {
    tell('moved-on');
  } else {
    load().catch(failure => tell('failure', failure));
  }
}

let searchRuns = false;
const stateChanged = () => searchRuns !== (desk.board?.searching ?? false);

/**
 * What the server says by itself: another window kept something, a search goes on. A tab that nobody
 * looks at hangs up, because a browser has few lines to one server; seen again, it loads the board.
 */
export function listen() {
  let events = document.hidden ? null : line();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden) {
      events?.close();
      events = null;
    } else {
      events ??= line();
    }
  });
}

function line() {
  const events = new EventSource('/api/events');
  events.addEventListener('board', event => {
    seen = JSON.parse(event.data);
    if (waiting > 0) {
      newer = true;
    } else {
      fresh();
    }
  });
  events.addEventListener('search', event => {
    const search = JSON.parse(event.data);
    searchRuns = search.state === 'RUNNING';
    tell('search', search);
    if (stateChanged() && waiting === 0) {
      load().catch(failure => tell('failure', failure));
    }
  });
  events.addEventListener('whatif', event => tell('comparison', JSON.parse(event.data)));
  events.addEventListener('error', () => tell('line', false));
  events.addEventListener('open', () => {
    tell('line', true);
    if (desk.board) {
      desk.board.change = -1; // A server that was started anew counts from the beginning.
    }
    if (desk.board && waiting === 0 && !proposing()) {
      load().catch(failure => tell('failure', failure));
    }
  });
  return events;
}

hear('reload', () => {
  load().catch(failure => tell('failure', failure));
});

/**
 * A touch that is looked at before it is kept: what was asked, what the server decoded, and where it
 * is going to go. There is one at a time.
 */

import {Refusal, send} from '../base/api.js';
import {hear, tell} from '../base/bus.js';
import {change, orStale, whetherProposing} from './changes.js';
import {desk} from './desk.js';

/**
 * @typedef {object} Proposal
 * @property {any} touch as Touch.java has it, with "kind"
 * @property {any} tried the TriedView; null while the server works
 * @property {string} failure why it could not be tried; empty when it could
 * @property {'form' | 'drag' | 'keys'} from
 * @property {boolean} keeping true while it is being kept
 */

/** @type {Proposal | null} */
let open = null;
let asking = false;
let again = false;

whetherProposing(() => open !== null);

/** @returns {Proposal | null} */
export function proposal() {
  return open;
}

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/**
 * Asks what a touch would come to. While an answer is on its way only the latest touch is remembered,
 * so that dragging never queues.
 *
 * @param {any} touch
 * @param {'form' | 'drag' | 'keys'} from
 */
export function propose(touch, from) {
  const current = open && !open.failure && (!open.tried || open.tried.revision === desk.board.revision);
  if (open && current && same(open.touch, touch)) {
    open.from = from;
    tell('proposal', open);
    return;
  }
  const goesOn = open && open.touch.job === touch.job && from !== 'form';
  open = {touch, tried: goesOn ? open?.tried : null, failure: '', from, keeping: false};
  tell('proposal', open);
  if (asking) {
    again = true;
  } else {
    ask();
  }
}

async function ask() {
  asking = true;
  const asked = open;
  let tried = null;
  let failure = null;
  try {
    tried = await send('/api/try', {revision: desk.board.revision, touch: asked?.touch});
  } catch (problem) {
    failure = problem;
  }
  asking = false;
  if (again) {
    again = false;
    if (open) {
      ask();
    }
  } else if (failure) {
    await failed(asked, failure);
  } else if (open && open === asked) {
    open.tried = tried;
    open.failure = '';
    tell('proposal', open);
  }
}

async function failed(asked, failure) {
  if (open !== asked || !open) {
    return;
  }
  try {
    await orStale(failure);
  } catch (other) {
    if (!(other instanceof Refusal)) {
      throw other;
    }
    open.tried = null;
    open.failure = other.message;
    tell('proposal', open);
  }
}

/** True when the last answer is about the touch that is open now. */
export function answered() {
  return open !== null && !again && !asking && open.tried !== null;
}

/** Takes the proposal off the page; the plan stays as it is. */
export function drop() {
  if (open) {
    open = null;
    again = false;
    tell('proposal', null);
  }
}

/**
 * Keeps what is proposed.
 *
 * @param {boolean} pin also pins the job to its new rig and place
 */
export async function keep(pin) {
  const kept = open;
  if (!kept || kept.keeping || kept.failure || !kept.tried?.allowed) {
    return;
  }
  kept.keeping = true;
  tell('proposal', kept);
  try {
    // The revision is the one whose costs were shown: on any other board it is refused.
    const touch = pin ? {...kept.touch, pin: true} : kept.touch;
    const board = await change('/api/keep', {revision: kept.tried.revision, touch});
    if (board === null) {
      return;
    }
    drop();
    tell('kept', {job: kept.touch.job, from: kept.from, words: `${kept.tried.sentence}${pin ? ', pinned there' : ''}`});
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    if (open === kept) {
      kept.keeping = false;
      kept.failure = failure.message;
      tell('proposal', kept);
    } else {
      tell('failure', failure);
    }
  }
}

hear('drop', drop);

// Costs that were shown of another board are worked out anew.
hear('board', board => {
  if (open && !open.keeping && open.tried && open.tried.revision !== board.revision) {
    open.tried = null;
    tell('proposal', open);
    if (asking) {
      again = true;
    } else {
      ask();
    }
  }
});

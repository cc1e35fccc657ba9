/** Moves a job by keyboard: arrows choose rig and place, Enter keeps, Escape drops. */

import {hear, tell} from '../base/bus.js';
import {say} from '../base/live.js';
import {drawnBar, choice} from '../chart/chart.js';
import {markPlace} from '../chart/ghosts.js';
import {desk, locked} from '../plan/desk.js';
import {answered, drop, keep, proposal, propose} from '../plan/proposal.js';
import {isThere, others, placeAt, placeStart, placeWords} from './places.js';

/** @type {{job: string, rig: string, place: number} | null} */
let moving = null;

/** True while arrows move a job instead of the focus. */
export function isMoving() {
  return moving !== null;
}

/**
 * Begins to move a planned job.
 *
 * @param {string} id
 */
export function beginMove(id) {
  const placing = desk.jobs.get(id)?.placing;
  if (locked()) {
    say('A search runs: the plan cannot be touched.');
    return;
  }
  if (!placing || choice.by !== 'rig') {
    tell('move-form', id);
    return;
  }
  moving = {job: id, rig: placing.rig, place: placing.place};
  drawnBar(`job:${id}`)?.classList.add('moving');
  markPlace({rig: moving.rig, at: placeStart(moving.rig, id, moving.place)});
  say(`Moving ${id}. Left and right choose the place, up and down the rig. Enter keeps, Shift and Enter keeps and pins, Escape drops.`);
}

function stop() {
  if (moving) {
    drawnBar(`job:${moving.job}`)?.classList.remove('moving');
    moving = null;
  }
}

/** Takes a step; false when the key means nothing here. */
export function moveKey(event) {
  if (!moving) {
    return false;
  }
  switch (event.key) {
    case 'ArrowLeft': step(-1); break;
    case 'ArrowRight': step(1); break;
    case 'Home': to(moving.rig, 0); break;
    case 'End': to(moving.rig, others(moving.rig, moving.job).length); break;
    case 'ArrowUp': changeRig(-1); break;
    case 'ArrowDown': changeRig(1); break;
    case 'Enter': enter(event.shiftKey); break;
    case 'Escape': cancel(); break;
    default: return false;
  }
  return true;
}

function step(by) {
  if (moving) {
    const most = others(moving.rig, moving.job).length;
    const place = moving.place + by;
    if (place < 0 || place > most) {
      say(by < 0 ? 'This is the first place.' : 'This is the last place.');
    } else {
      to(moving.rig, place);
    }
  }
}

function changeRig(by) {
  if (moving) {
    const rigs = desk.board.rigs.map(rig => rig.id);
    const rig = rigs[rigs.indexOf(moving.rig) + by];
    if (rig === undefined) {
      say('There is no further rig.');
    } else {
      const at = placeStart(moving.rig, moving.job, moving.place);
      to(rig, placeAt(rig, moving.job, at));
    }
  }
}

function to(rig, place) {
  if (!moving) {
    return;
  }
  moving.rig = rig;
  moving.place = place;
  const words = placeWords(rig, moving.job, place);
  if (isThere(moving.job, rig, place)) {
    drop();
    say(`${words}, where it is now`);
  } else {
    propose({kind: 'MOVE', job: moving.job, rig, place}, 'keys');
    say(words);
  }
  markPlace({rig, at: placeStart(rig, moving.job, place)});
}

function enter(pin) {
  if (!proposal()) {
    stop();
    markPlace(null);
    say('It stays where it is.');
  } else if (!answered()) {
    say('Still working it out.');
  } else if (!proposal()?.tried.allowed) {
    say('It cannot go there. Choose another place, or Escape.');
  } else {
    keep(pin);
  }
}

function cancel() {
  const id = moving?.job;
  stop();
  drop();
  markPlace(null);
  say(`${id} stays where it is.`);
}

/** Ends moving when the proposal ends or something else is touched. */
export function startMoving() {
  hear('kept', stop);
  hear('drop', stop);
  hear('stale', stop);
  hear('proposal', open => {
    if (open && moving && (open.touch.kind !== 'MOVE' || open.touch.job !== moving.job)) {
      stop();
    }
  });
  hear('chart-shown', () => {
    if (moving) {
      stop();
      markPlace(null);
    }
  });
}

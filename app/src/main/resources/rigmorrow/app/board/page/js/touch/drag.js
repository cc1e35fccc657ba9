/** Drags jobs to other rigs and places. A drag snaps to places and shows its cost before the drop. */

import {el, icon} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {desk, locked, select} from '../plan/desk.js';
import {answered, drop, propose, proposal} from '../plan/proposal.js';
import {addOptions} from '../chart/chart.js';
import {markPlace} from '../chart/ghosts.js';
import {hidePeek, showPeek} from '../chart/peek.js';
import {ignoreNextClick} from '../chart/selection.js';
import {standing} from './standing.js';
import {isThere, placeAt, placeStart, placeWords} from './places.js';

/** @type {{job: string, rig: string, place: number} | null} */
let target = null;
let given = false;
let pointer = {x: 0, y: 0};

function card() {
  if (!target) {
    return;
  }
  const open = proposal();
  const tried = open?.tried;
  const words = placeWords(target.rig, target.job, target.place);
  if (isThere(target.job, target.rig, target.place)) {
    showPeek(pointer.x, pointer.y, el('strong', {text: `${target.job} stays on ${words}`}));
    return;
  }
  showPeek(pointer.x, pointer.y, el('strong', {text: `${target.job} to ${words}`}),
    locked() ? el('div', {class: 'refused', text: 'A search runs: the plan cannot be touched.'})
      : open?.failure ? el('div', {class: 'refused', text: open.failure})
        : !tried || !answered() ? el('div', {class: 'soft', text: 'Working it out …'})
          : tried.allowed ? [standing(tried), tried.costs.slice(0, 4).map(text => el('div', {text})),
            tried.breaches.slice(0, 3).map(breach => el('div', {class: 'refused'}, icon('warn'), ` ${breach.sentence}`))]
            : [el('div', {class: 'refused'}, icon('warn'), ' It cannot go there.'), tried.refusals.map(text => el('div', {class: 'refused', text}))]);
}

function moving(item, callback) {
  const id = String(item.id);
  const row = String(item.group);
  if (locked()) {
    notice('A search runs: the plan cannot be touched until it ends.');
    say('A search runs: the plan cannot be touched until it ends.');
  }
  if (!id.startsWith('job:') || given || locked()) {
    callback(null);
    return;
  }
  const job = id.slice(4);
  if (!target) {
    hidePeek(true);
    document.body.classList.add('dragging');
    select(job, {open: true});
  }
  if (!row.startsWith('rig:')) {
    callback(null);
    return;
  }
  const rig = row.slice(4);
  const length = item.end - item.start;
  const place = placeAt(rig, job, desk.clock.second(item.start.getTime()));
  const at = placeStart(rig, job, place);
  if (!target || target.rig !== rig || target.place !== place) {
    target = {job, rig, place};
    markPlace({rig, at});
    if (isThere(job, rig, place)) {
      drop();
      markPlace({rig, at});
    } else {
      propose({kind: 'MOVE', job, rig, place}, 'drag');
    }
  }
  card();
  const start = desk.clock.millis(at);
  item.start = new Date(start);
  item.end = new Date(start + length);
  callback(item);
}

/** The bar always goes back: the plan only changes when the proposal is kept. */
function dropped(item, callback) {
  callback(null);
  ignoreNextClick();
  const where = target;
  end();
  if (!where) {
    return;
  }
  if (!given && isThere(where.job, where.rig, where.place)) {
    drop();
  }
  given = false;
}

function end() {
  target = null;
  document.body.classList.remove('dragging');
  hidePeek();
  if (!proposal()) {
    markPlace(null);
  }
}

/** Adds dragging to the chart before it is made. */
export function startDrag() {
  addOptions({
    editable: {add: false, remove: false, updateTime: true, updateGroup: true, overrideItems: false},
    itemsAlwaysDraggable: {item: true, range: false},
    snap: null,
    onMoving: moving,
    onMove: dropped,
  });
  addEventListener('pointermove', event => {
    pointer = {x: event.clientX, y: event.clientY};
  }, {passive: true, capture: true});
  addEventListener('pointerup', () => {
    given = false;
  });
  addEventListener('keydown', event => {
    if (event.key === 'Escape' && target) {
      event.stopPropagation();
      given = true;
      drop();
      end();
    }
  }, {capture: true});
  hear('proposal', card);
}

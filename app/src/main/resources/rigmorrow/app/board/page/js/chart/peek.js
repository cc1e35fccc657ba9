/** A card beside the pointer: what a bar is, or what a drag would cost. The panels say the same. */

import {byId, el, fill} from '../base/dom.js';
import {lateness} from '../base/words.js';
import {desk, people} from '../plan/desk.js';
import {statesOf} from './bar.js';
import {PARTS, partsOf} from './rows.js';

let waiting = 0;
let pinnedTo = false;

/** Shows a card at the pointer until it is hidden. */
export function showPeek(x, y, ...children) {
  const card = byId('peek');
  fill(card, ...children);
  card.hidden = false;
  const right = x + 16 + card.offsetWidth > innerWidth;
  const below = y + 18 + card.offsetHeight > innerHeight;
  card.style.left = `${Math.max(4, right ? x - 12 - card.offsetWidth : x + 16)}px`;
  card.style.top = `${Math.max(4, below ? y - 12 - card.offsetHeight : y + 18)}px`;
}

/** @param {boolean} [drag] true to keep cards of bars away while something is dragged */
export function hidePeek(drag = false) {
  clearTimeout(waiting);
  pinnedTo = drag;
  byId('peek').hidden = true;
}

function lines(job, part) {
  const {clock} = desk;
  const {placing} = job;
  const said = part === undefined ? partsOf(placing).map(one =>
    `${PARTS[one.part].name} ${clock.span(one.start, one.end)}${who(placing, one.part)}`)
    : [`${PARTS[part.name].name} ${clock.span(part.start, part.end)}`];
  return [
    el('strong', {text: `${job.id} ${job.name}`}),
    el('div', {text: `${placing.rig}, place ${placing.place + 1}`}),
    said.map(text => el('div', {text})),
    job.promise && el('div', {text: `${job.promise.must ? 'Must be by' : 'Promised'} ${clock.at(job.promise.due)}`
      + (placing.lateSeconds ? `, late ${lateness(placing.lateSeconds)}` : '')}),
    job.pin && el('div', {text: statesOf({...job, placing: null}).join(', ')}),
  ];
}

function who(placing, part) {
  const ids = {changeover: placing.changeoverOperators, load: placing.loadOperators, capture: placing.captureOperators,
    unload: placing.unloadOperators}[part] ?? [];
  return ids.length ? `, ${people(ids).join(' and ')}` : '';
}

/** Wires the pointer. */
export function startPeek() {
  const holder = byId('chart');
  holder.addEventListener('pointerover', event => {
    const made = /** @type {HTMLElement} */ (event.target).closest?.('.bar');
    clearTimeout(waiting);
    if (!(made instanceof HTMLElement) || event.pointerType === 'touch' || pinnedTo) {
      if (!pinnedTo) {
        byId('peek').hidden = true;
      }
      return;
    }
    waiting = window.setTimeout(() => {
      const job = desk.jobs.get(made.dataset.job ?? '');
      if (job?.placing && made.isConnected && !pinnedTo && event.buttons === 0) {
        showPeek(event.clientX, event.clientY, ...lines(job));
      }
    }, 350);
  });
  holder.addEventListener('pointerleave', () => !pinnedTo && hidePeek());
  holder.addEventListener('pointerdown', () => hidePeek(pinnedTo));
  holder.addEventListener('wheel', () => !pinnedTo && hidePeek(), {passive: true});
}

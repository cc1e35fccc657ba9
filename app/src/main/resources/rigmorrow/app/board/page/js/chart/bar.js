/** Draws bars: a line of text over a strip of parts. Details only where there is room for them. */

import {el, icon} from '../base/dom.js';
import {lateness} from '../base/words.js';
import {desk, spoken} from '../plan/desk.js';
import {PARTS, partsOf} from './rows.js';

/** Pixels from which a bar shows its parts, its text, and a part its letter. */
const PARTS_FROM = 7;
const TEXT_FROM = 30;
const NAME_FROM = 74;
const LETTER_FROM = 11;

/** Where a job of the chart is: "late 12 min, pinned to rig and place". */
export function statesOf(job) {
  const states = [];
  if (job.placing?.lateSeconds > 0) {
    states.push(`late ${lateness(job.placing.lateSeconds)}`);
  }
  if (job.pin) {
    states.push(pinWords(job.pin));
  }
  return states;
}

/** "pinned to R2, place 4, start 09:30". */
export function pinWords(pin) {
  const place = pin.place === null ? '' : `, place ${pin.place + 1}`;
  const start = pin.startsAt === null ? '' : `, start ${pin.startsAt.slice(desk.board.days > 1 ? 5 : 11, 16).replace('T', ' ')}`;
  const state = pin.state === 'PLANNED' ? 'pinned to' : `${pin.state.toLowerCase()} on`;
  return `${state} ${pin.rig}${place}${start}`;
}

/**
 * @param {import('./rows.js').Bar} bar
 * @returns {HTMLElement} to be filled by detail()
 */
export function draw(bar) {
  if (bar.kind === 'job') {
    return drawJob(bar);
  }
  return bar.kind === 'task' ? drawTask(bar) : drawUse(bar);
}

function drawJob(bar) {
  const job = bar.of;
  const {placing} = job;
  const made = document.createElement('div');
  made.className = `bar job${placing.lateSeconds > 0 ? ' late' : ''}${job.pin ? ' pinned' : ''}${job.promise?.must ? ' must' : ''}`;
  made.dataset.job = job.id;
  made.dataset.rig = placing.rig;
  made.dataset.place = placing.place;
  return made;
}

function drawTask(bar) {
  const task = bar.of;
  const made = document.createElement('div');
  made.className = `bar task ${task.part.toLowerCase()}-task`;
  made.dataset.job = task.job;
  made.dataset.rig = task.rig;
  made.dataset.part = task.part.toLowerCase();
  return made;
}

function drawUse(bar) {
  const made = document.createElement('div');
  made.className = 'bar use';
  made.dataset.job = bar.of.job;
  made.dataset.rig = bar.of.rig;
  return made;
}

/** What a bar says to those who listen. Worked out late: thousands of bars are never reached. */
export function labelOf(bar) {
  const {clock} = desk;
  if (bar.kind === 'job') {
    return [...spoken(bar.of), ...statesOf(bar.of)].join(', ');
  }
  const use = bar.of;
  const name = desk.jobs.get(use.job)?.name ?? '';
  const what = bar.kind === 'task' ? `${PARTS[use.part.toLowerCase()].name} of ${name}` : name;
  return `${use.job} ${placeOf(use)}, ${what}, ${clock.span(use.start, use.end)}`;
}

/** "on R2", and where a piece of kit comes from. */
function placeOf(use) {
  return `on ${use.rig}${use.from && use.from !== use.rig ? ` from ${use.from}` : ''}`;
}

/** Makes a bar a button that can have the focus. */
export function nameBar(made, bar) {
  if (!made.hasAttribute('role')) {
    made.setAttribute('role', 'button');
    made.setAttribute('aria-label', labelOf(bar));
    made.tabIndex = -1;
  }
}

/**
 * Fills a bar with what its width has room for; does nothing where that is as it was.
 *
 * @param {HTMLElement & {shown?: string}} made by draw()
 * @param {import('./rows.js').Bar} bar
 * @param {number} pixels that the bar is wide
 */
export function detail(made, bar, pixels) {
  const rough = pixels < PARTS_FROM ? 'tiny' : pixels < TEXT_FROM ? 'small' : `w${Math.round(pixels)}`;
  if (made.shown === rough) {
    return;
  }
  const before = made.shown;
  made.shown = rough;
  if (rough === 'tiny') {
    made.classList.add('tiny');
    if (before !== undefined) {
      made.replaceChildren();
    }
    return;
  }
  made.classList.remove('tiny');
  nameBar(made, bar);
  made.replaceChildren(text(bar, pixels), strip(bar, pixels));
}

/**
 * A state's sign. Its words and the letters of parts are drawn by the style sheet: the bar's label says
 * them in full, and what stands in a button must be in its label word by word.
 */
function mark(cls, picture, words) {
  return el('span', {class: `mark ${cls}`, data: words ? {words} : {}}, picture && icon(picture));
}

function text(bar, pixels) {
  const line = el('span', {'class': 'line', 'aria-hidden': 'true'});
  if (pixels < 16) {
    return line;
  }
  if (bar.kind === 'job') {
    const job = bar.of;
    const late = job.placing.lateSeconds;
    line.append(
      ...(job.pin ? [mark('pin', 'pin', pixels > 220 ? 'pinned' : '')] : []),
      ...(job.promise?.must ? [mark('must', 'must', pixels > 220 ? 'must' : '')] : []));
    if (pixels >= TEXT_FROM) {
      line.append(el('span', {class: 'id', text: job.id}));
    }
    if (late > 0) {
      line.append(pixels >= NAME_FROM ? mark('late', null, `late ${lateness(late)}`) : mark('late', 'late', ''));
    }
    if (pixels >= NAME_FROM) {
      line.append(el('span', {class: 'name', text: ` ${job.name}`}));
    }
  } else if (pixels >= TEXT_FROM) {
    line.append(el('span', {class: 'id', text: bar.of.job}));
    if (pixels >= NAME_FROM) {
      line.append(el('span', {class: 'name', text: ` ${placeOf(bar.of)}`}));
    }
  }
  return line;
}

function strip(bar, pixels) {
  const whole = bar.end - bar.start;
  const parts = bar.kind === 'job' ? partsOf(bar.of.placing)
    : [{part: bar.kind === 'task' ? bar.of.part.toLowerCase() : 'in-use', start: bar.start, end: bar.end}];
  return el('span', {'class': 'strip', 'aria-hidden': 'true'}, parts.map(({part, start, end}) => {
    const share = (end - start) / whole;
    const made = el('span', {class: `part ${part}`});
    made.style.width = `${(100 * share).toFixed(3)}%`;
    if (share * pixels >= LETTER_FROM && PARTS[part]) {
      made.append(el('b', {data: {words: share * pixels > 70 ? PARTS[part].name : PARTS[part].letter}}));
    }
    return made;
  }));
}

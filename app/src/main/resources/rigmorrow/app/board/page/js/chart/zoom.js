/** Zoom, pan and the days, by buttons; keys call the same. */

import {byId} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {desk} from '../plan/desk.js';
import {chart, choice, show} from './chart.js';
import {dayWindow} from './days.js';

const STEP = 0.35;

/** @param {number} by 1 closer, -1 further away */
export function zoom(by) {
  const timeline = chart();
  const shown = timeline.getWindow();
  const width = shown.end - shown.start;
  const next = by > 0 ? width * (1 - STEP) : width / (1 - STEP);
  const middle = (shown.start.getTime() + shown.end.getTime()) / 2;
  timeline.setWindow(middle - next / 2, middle + next / 2, {animation: false});
}

/** @param {number} share of the window, negative for earlier */
export function pan(share) {
  const shown = chart().getWindow();
  const by = share * (shown.end - shown.start);
  chart().setWindow(shown.start.getTime() + by, shown.end.getTime() + by, {animation: false});
}

/** The planned day in the middle of the window. */
function shownDay() {
  const shown = chart().getWindow();
  const middle = desk.clock.second((shown.start.getTime() + shown.end.getTime()) / 2);
  return Math.min(Math.max(0, desk.clock.dayOf(middle)), desk.board.days - 1);
}

/** @param {number} [day] the one in the middle of the window when not given */
export function fitDay(day = shownDay()) {
  const window = dayWindow(Math.min(Math.max(0, day), desk.board.days - 1));
  chart().setWindow(desk.clock.millis(window.start), desk.clock.millis(window.end), {animation: false});
}

/** Shows all planned days. */
export function fitAll() {
  const first = dayWindow(0).start;
  const last = Math.max(desk.board.figures.finishedAt, dayWindow(desk.board.days - 1).end);
  chart().setWindow(desk.clock.millis(first), desk.clock.millis(last + 600), {animation: false});
}

function press(id, on) {
  byId(id).setAttribute('aria-pressed', String(on));
}

function rows(by) {
  choice.by = by;
  press('by-rig', by === 'rig');
  press('by-crew', by === 'crew');
  byId('chart').setAttribute('aria-label', by === 'rig' ? 'Plan by rig' : 'Plan by operator');
  show();
}

/** Shows the rows of rigs, if those of operators are shown. */
export function rowsByRig() {
  if (choice.by !== 'rig') {
    rows('rig');
  }
}

/** Wires the buttons over the chart. */
export function startZoom() {
  byId('zoom-in').addEventListener('click', () => zoom(1));
  byId('zoom-out').addEventListener('click', () => zoom(-1));
  byId('fit-day').addEventListener('click', () => fitDay());
  byId('fit-all').addEventListener('click', fitAll);
  byId('day-before').addEventListener('click', () => fitDay(shownDay() - 1));
  byId('day-after').addEventListener('click', () => fitDay(shownDay() + 1));
  byId('by-rig').addEventListener('click', () => rows('rig'));
  byId('by-crew').addEventListener('click', () => rows('crew'));
  for (const [id, name] of [['show-kit', 'kit'], ['show-samples', 'samples']]) {
    byId(id).addEventListener('click', () => {
      choice[name] = !choice[name];
      press(id, choice[name]);
      show();
    });
  }
  hear('board', board => {
    const many = board.days > 1;
    for (const id of ['fit-all', 'day-before', 'day-after']) {
      byId(id).hidden = !many;
    }
    byId('show-samples').hidden = board.samples.length === 0;
    byId('show-kit').hidden = board.kits.length === 0;
  });
}

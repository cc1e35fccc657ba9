/** The time chart: hands rows, bars and grounds to vis-timeline and keeps them up to date. */

import {byId} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {desk} from '../plan/desk.js';
import {axisFormat, axisStep, useFloorTime} from './axis.js';
import {detail, draw} from './bar.js';
import {dayWindow} from './days.js';
import {layGrounds, placeGrounds} from './grounds.js';
import {indent, rowLabel} from './labels.js';
import {chartOf} from './rows.js';
import {reachRows, scrolled, scrollTo} from './scroll.js';

const {Timeline, DataSet} = globalThis.vis;

/** What the rows show. */
export const choice = {by: /** @type {'rig' | 'crew'} */ ('rig'), kit: false, samples: false};

/** @type {any} */
let timeline = null;
let items = new DataSet();
let groups = new DataSet();
/** @type {Map<string, import('./rows.js').Bar>} */
let bars = new Map();
/** @type {Map<string, {key: string, made: any}>} drawn bars */
const drawn = new Map();
const keys = new Map();

/** The vis-timeline; null before the first board. */
export function chart() {
  return timeline;
}

/** @returns {Map<string, import('./rows.js').Bar>} bars by id */
export function chartBars() {
  return bars;
}

/** Pixels a second takes. */
export function pixelsPerSecond() {
  const shown = timeline.getWindow();
  return (1000 * timeline.body.domProps.center.width) / (shown.end - shown.start);
}

/** The element of a bar; undefined while vis-timeline keeps it off the page. */
export function barElement(id) {
  const made = drawn.get(id)?.made;
  return made?.isConnected ? made : undefined;
}

/** @type {((made: HTMLElement, bar: import('./rows.js').Bar) => void)[]} what is done to each new bar */
const dress = [];

/** @param {(made: HTMLElement, bar: import('./rows.js').Bar) => void} hook */
export function onBar(hook) {
  dress.push(hook);
}

/** The element of a bar that was drawn, also while it is off the page. */
export function drawnBar(id) {
  return drawn.get(id)?.made;
}

function template(item) {
  const bar = bars.get(item.id);
  if (!bar) {
    return '';
  }
  let entry = drawn.get(item.id);
  if (!entry || entry.key !== bar.key) {
    entry = {key: bar.key, made: draw(bar)};
    drawn.set(item.id, entry);
    dress.forEach(hook => hook(entry.made, bar));
  }
  detail(entry.made, bar, (bar.end - bar.start) * scale());
  return entry.made;
}

/** Pixels a second takes, while it is known; 0 after the window was changed. */
let known = 0;

function scale() {
  known ||= timeline?.body?.domProps?.center?.width ? pixelsPerSecond() : firstScale;
  return known;
}

let firstScale = 0.03;
let axis = '';

/** Draws the bars on the page anew where the zoom gave them more or less room. */
function redetail() {
  known = 0;
  const {scale: unit, step} = axisStep(scale());
  if (axis !== `${unit} ${step}`) {
    axis = `${unit} ${step}`;
    timeline.setOptions({timeAxis: {scale: unit, step}});
  }
  const left = (timeline.getWindow().start - desk.clock.originMillis) / 1000;
  for (const [id, {made}] of drawn) {
    const bar = bars.get(id);
    if (bar && made.isConnected) {
      detail(made, bar, (bar.end - bar.start) * scale());
      indent(made, (left - bar.start) * scale());
    }
  }
}

/** So many bars are shown at once; a longer stretch of a crew's many tasks would be slow to draw. */
const MOST_BARS = 6000;

/** @param {object} more options of vis-timeline that belong to other modules, such as dragging */
function options(more) {
  const {clock} = desk;
  const early = clock.millis(0) - 3_600_000;
  const late = clock.millis(Math.max(desk.board.horizonSeconds, desk.board.figures.finishedAt)) + 3_600_000;
  return {
    moment: useFloorTime(clock),
    format: axisFormat(clock),
    min: early,
    max: late,
    zoomMin: 120_000,
    zoomMax: Math.round((late - early) * Math.min(1, MOST_BARS / Math.max(1, bars.size))),
    zoomKey: 'ctrlKey',
    horizontalScroll: false,
    verticalScroll: true,
    maxHeight: Math.max(300, Math.round(innerHeight * 0.72)),
    orientation: {axis: 'top', item: 'top'},
    rtl: false,
    stack: false,
    groupHeightMode: 'fixed',
    selectable: false,
    showCurrentTime: false,
    showTooltips: false,
    margin: {axis: 4, item: {vertical: 4, horizontal: 0}},
    align: 'left',
    groupOrder: 'order',
    template,
    groupTemplate: rowLabel,
    loadingScreenTemplate: undefined,
    ...more,
  };
}

const YEAR = 365 * 24 * 3_600_000;

let extra = {};

/** Options that another module adds before the chart is made. */
export function addOptions(more) {
  extra = {...extra, ...more};
}

/** From so many changed bars on the chart is made anew: vis-timeline measures each changed bar alone. */
const MANY = 300;

function itemsOf(made) {
  const wanted = new Map();
  for (const bar of made) {
    wanted.set(bar.id, {
      id: bar.id, group: bar.row, start: desk.clock.millis(bar.start), end: desk.clock.millis(bar.end),
      className: bar.kind, key: bar.key,
      editable: bar.kind === 'job' ? {updateTime: true, updateGroup: true, remove: false} : false,
    });
  }
  return wanted;
}

/**
 * Shows the board as it is now.
 *
 * @param {boolean} [anew] true to make the whole chart anew
 */
export function show(anew = timeline === null) {
  const content = chartOf(choice);
  bars = new Map(content.bars.map(bar => [bar.id, bar]));
  const wanted = itemsOf(content.bars);
  const order = content.rows.map((row, i) => ({...row, order: i}));
  const gone = [...keys.keys()].filter(id => !wanted.has(id));
  const changed = [...wanted.values()].filter(item => keys.get(item.id) !== item.key);
  gone.forEach(id => {
    keys.delete(id);
    drawn.delete(id);
  });
  changed.forEach(item => keys.set(item.id, item.key));
  const {board} = desk;
  const list = `${board.date} ${board.days} ${board.jobs.length} ${board.jobs[0]?.id} ${board.jobs.at(-1)?.id}`;
  const other = list !== shownList;
  shownList = list;
  if (anew || other || gone.length + changed.length > MANY) {
    begin(order, [...wanted.values()], other);
  } else {
    // Only what differs goes to vis-timeline: bars that stay keep their element and the focus.
    timeline.setOptions(options({}));
    const ids = new Set(order.map(row => row.id));
    groups.remove(groups.getIds().filter(id => !ids.has(id)));
    groups.update(order);
    items.remove(gone);
    items.update(changed);
  }
  layGrounds(content.grounds);
  tell('chart-shown', null);
  // Two frames later everything is on the page: the time it took can be read as "board-drawn".
  requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(() => setTimeout(() =>
    performance.measure('board-drawn', 'board-taken')))));
}

/** Which shot list the window is about; another one begins with its first day. */
let shownList = '';

function begin(rows, list, other) {
  const holder = byId('chart');
  const window = timeline && !other ? timeline.getWindow() : firstWindow();
  const top = timeline ? scrolled() : 0;
  timeline?.destroy();
  drawn.clear();
  known = 0;
  firstScale = 1000 * Math.max(100, holder.clientWidth - 150) / (window.end - window.start);
  items = new DataSet(list);
  groups = new DataSet(rows);
  // Bars that are in the window when they are added are measured one by one, later ones together:
  // so the window starts years away from the plan.
  const {min, max, ...rest} = options(extra);
  const timeAxis = axisStep(firstScale);
  axis = `${timeAxis.scale} ${timeAxis.step}`;
  const away = min - YEAR;
  timeline = new Timeline(holder, items, groups, {...rest, timeAxis, start: away, end: away + 60_000});
  timeline.setOptions({min, max, start: window.start, end: window.end});
  timeline.on('rangechange', () => {
    known = 0;
    tell('window', null);
  });
  timeline.on('rangechanged', () => {
    redetail();
    tell('window', null);
  });
  // Until it has seen a change of its window it would not follow the next ones; this one it has seen.
  timeline.initialRangeChangeDone = true;
  timeline.body.emitter.emit('_change', {queue: true});
  timeline.on('changed', () => {
    placeGrounds(timeline);
    reachRows();
    tell('chart-changed', null);
  });
  tell('chart-made', timeline);
  scrollTo(top);
  watch ??= watchSize(holder);
}

let watch = null;

function watchSize(holder) {
  const observer = new ResizeObserver(() => requestAnimationFrame(() => {
    redetail();
    tell('window', null);
  }));
  observer.observe(holder);
  return observer;
}

function firstWindow() {
  const day = dayWindow(0);
  return {start: desk.clock.millis(day.start), end: desk.clock.millis(day.end)};
}

hear('board', () => {
  if (!byId('view-plan').hidden) {
    show();
  } else {
    stale = true;
  }
});
let stale = false;
hear('view', view => {
  if (view === 'plan' && desk.board && (stale || timeline === null)) {
    stale = false;
    show();
  }
});

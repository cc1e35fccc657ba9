/**
 * The focus among the bars. One stop of the Tab key leads into the chart, to the bar that had the
 * focus last; arrows go on from there. vis-timeline takes bars outside the window off the page, so a
 * bar is brought into the window before it gets the focus.
 */

import {byId} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {say} from '../base/live.js';
import {desk, select} from '../plan/desk.js';
import {labelOf, nameBar} from './bar.js';
import {barElement, chart, chartBars} from './chart.js';
import {barOf, bringIntoView} from './selection.js';

/** @type {string | null} */
let current = null;
let within = false;
let parked = false;
/** @type {string | null} bar that waits to be drawn */
let wanted = null;

/** The bar that has the focus or would get it. @returns {import('./rows.js').Bar | undefined} */
export function currentBar() {
  const bars = chartBars();
  const chosen = desk.selected ? barOf(desk.selected) : undefined;
  const had = current ? bars.get(current) : undefined;
  if (had && (!desk.selected || (had.of.id ?? had.of.job) === desk.selected)) {
    return had;
  }
  return chosen ?? had ?? firstInWindow();
}

function firstInWindow() {
  const shown = chart()?.getWindow();
  const all = [...chartBars().values()];
  return all.find(bar => desk.clock.millis(bar.start) >= shown?.start) ?? all[0];
}

/**
 * Puts the focus on a bar.
 *
 * @param {import('./rows.js').Bar} bar
 * @param {{quiet?: boolean}} [how] quiet: nothing is said
 */
export function focusBar(bar, how = {}) {
  current = bar.id;
  bringIntoView(bar);
  const job = bar.of.id ?? bar.of.job;
  if (desk.selected !== job) {
    select(job, {});
  }
  if (!how.quiet) {
    say(labelOf(bar));
  }
  if (!give(bar)) {
    wanted = bar.id;
  }
}

function give(bar) {
  const made = barElement(bar.id);
  if (!made) {
    return false;
  }
  nameBar(made, bar);
  made.tabIndex = 0;
  parked = false;
  made.focus({preventScroll: true});
  scrollPage(made);
  wanted = null;
  return true;
}

/** Scrolls the page, not vis-timeline's panels, to a bar above or below the screen. */
function scrollPage(made) {
  const {top, bottom} = made.getBoundingClientRect();
  if (bottom > innerHeight) {
    scrollBy(0, bottom - innerHeight + 16);
  } else if (top < 0) {
    scrollBy(0, top - 16);
  }
}

/** Bars of a row in order of time. */
export function rowBars(row) {
  return [...chartBars().values()].filter(bar => bar.row === row).sort((one, other) => one.start - other.start);
}

/** The bar of a row that is nearest in time to another. */
function nearest(row, bar) {
  const middle = (bar.start + bar.end) / 2;
  const distance = other => Math.max(other.start - middle, middle - other.end, 0);
  return rowBars(row).reduce((best, other) => !best || distance(other) < distance(best) ? other : best,
    /** @type {import('./rows.js').Bar | undefined} */ (undefined));
}

/**
 * The neighbour of a bar.
 *
 * @param {import('./rows.js').Bar} bar
 * @param {string} key of the keyboard
 */
export function neighbour(bar, key) {
  const row = rowBars(bar.row);
  const at = row.findIndex(other => other.id === bar.id);
  switch (key) {
    case 'ArrowLeft': return row[at - 1];
    case 'ArrowRight': return row[at + 1];
    case 'Home': return row[0];
    case 'End': return row.at(-1);
    default: return inNextRow(bar, key === 'ArrowUp' ? -1 : 1);
  }
}

function inNextRow(bar, step) {
  const rows = [...new Set([...chartBars().values()].map(other => other.row))];
  const at = rows.indexOf(bar.row) + step;
  return rows[at] === undefined ? undefined : nearest(rows[at], bar);
}

/** Wires the chart as one stop of the Tab key. */
export function startFocus() {
  const holder = byId('chart');
  holder.addEventListener('focusin', event => {
    within = true;
    if (event.target === holder) {
      if (parked) {
        return;
      }
      const bar = chart() ? currentBar() : undefined;
      if (bar) {
        focusBar(bar);
      }
    } else {
      holder.tabIndex = -1;
    }
  });
  holder.addEventListener('focusout', event => {
    const to = event.relatedTarget;
    if (event.target instanceof HTMLElement && event.target.classList.contains('bar')) {
      event.target.tabIndex = -1;
    }
    if (!(to instanceof Node) || !holder.contains(to)) {
      holder.tabIndex = 0;
    }
  });
  // Whoever goes on elsewhere gives the chart's focus up; a bar that is taken off the page does not.
  const elsewhere = event => {
    if (!(event.target instanceof Node) || !holder.contains(event.target)) {
      within = false;
      parked = false;
    }
  };
  document.addEventListener('focusin', elsewhere);
  document.addEventListener('pointerdown', elsewhere);
  hear('chart-changed', () => {
    const bar = chartBars().get(wanted ?? '') ?? (within && (lost() || parked) ? currentBar() : undefined);
    if (bar && !give(bar) && lost()) {
      // The bar is outside the window: the chart itself holds the focus until it comes back.
      parked = true;
      holder.focus({preventScroll: true});
    }
  });
  hear('select', ({id, focus}) => {
    const bar = id && focus && chart() ? barOf(id) : undefined;
    if (bar) {
      focusBar(bar);
    }
  });
}

/** True when the bar with the focus was taken off the page. */
function lost() {
  return document.activeElement === document.body || document.activeElement === null;
}

/** The chosen job in the chart: marked, brought into the window, chosen by a click. */

import {byId} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {desk, select} from '../plan/desk.js';
import {chart, chartBars, choice, drawnBar, onBar} from './chart.js';
import {dayWindow} from './days.js';

const dress = (made, bar) => {
  const id = bar.kind === 'job' ? bar.of.id : bar.of.job;
  const chosen = desk.selected !== null && id === desk.selected;
  made.classList.toggle('selected', chosen);
};

/** The first bar of a job: its own, or its first task. */
export function barOf(job) {
  if (choice.by === 'rig') {
    return chartBars().get(`job:${job}`);
  }
  let first;
  for (const bar of chartBars().values()) {
    if (bar.of.job === job && (!first || bar.start < first.start)) {
      first = bar;
    }
  }
  return first;
}

/** Brings a bar into the window, in time and among the rows. */
export function bringIntoView(bar) {
  const timeline = chart();
  const shown = timeline.getWindow();
  const start = desk.clock.millis(bar.start);
  const end = desk.clock.millis(bar.end);
  const outside = start < shown.start || end > shown.end;
  if (outside || !rowInView(bar.row)) {
    const width = shown.end - shown.start;
    const long = end - start > width;
    timeline.focus(bar.id, {zoom: false, animation: false});
    if (long) {
      timeline.setWindow(start, start + width, {animation: false});
    }
  }
}

function rowInView(row) {
  const label = byId('chart').querySelector(`.row-name[data-row="${CSS.escape(row)}"]`);
  const panel = byId('chart').querySelector('.vis-panel.vis-left');
  if (!label || !panel) {
    return true;
  }
  const inner = label.getBoundingClientRect();
  const outer = panel.getBoundingClientRect();
  return inner.top >= outer.top - 1 && inner.bottom <= outer.bottom + 1;
}

let dragged = false;

/** A drag ends with a click that means nothing. */
export function ignoreNextClick() {
  dragged = true;
  setTimeout(() => {
    dragged = false;
  }, 250);
}

/** Follows clicks and the selection. */
export function startSelection() {
  onBar(dress);
  byId('chart').addEventListener('click', event => {
    const made = /** @type {HTMLElement} */ (event.target).closest?.('.bar');
    if (made instanceof HTMLElement && !dragged) {
      select(made.dataset.job ?? null, {open: true, focus: true});
    }
  });
  hear('select', ({id, show}) => {
    for (const bar of chartBars().values()) {
      const made = drawnBar(bar.id);
      if (made) {
        dress(made, bar);
      }
    }
    const bar = id && chart() ? barOf(id) : undefined;
    if (bar && show) {
      const day = desk.clock.dayOf(bar.start);
      const window = dayWindow(Math.min(day, desk.board.days - 1));
      const shown = chart().getWindow();
      // From afar a bar cannot be told from its neighbours: come down to its day.
      if (shown.end - shown.start > 1000 * (window.end - window.start) * 1.6) {
        chart().setWindow(desk.clock.millis(window.start), desk.clock.millis(window.end), {animation: false});
      }
      bringIntoView(bar);
    }
  });
}

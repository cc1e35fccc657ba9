/** How many people are busy over the day, under the chart and along the same time. */

import {byId, el, fill, svg} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {length} from '../base/words.js';
import {desk} from '../plan/desk.js';
import {chart} from './chart.js';

/** @type {any} */
let area = null;
let most = 1;

function path(load, value, closed) {
  const points = [];
  load.forEach(step => points.push(`${step.start},${most - value(step)}`, `${step.end},${most - value(step)}`));
  const line = `M${points.join('L')}`;
  return closed && load.length ? `${line}L${load.at(-1).end},${most}L${load[0].start},${most}Z` : line;
}

function sentence(load, clock) {
  const there = load.filter(step => step.there > 0 || step.busy > 0);
  if (there.length === 0) {
    return 'Nobody is there.';
  }
  const top = there.reduce((best, step) => step.busy > best.busy ? step : best);
  const sum = of => desk.board.operators.reduce((all, operator) => all + operator[of], 0);
  const share = 100 * sum('handsOnSeconds') / Math.max(1, sum('shiftSeconds'));
  const full = there.filter(step => step.there > 0 && step.busy >= 0.95 * step.there);
  const seconds = full.reduce((all, step) => all + step.end - step.start, 0);
  return `The crew is busy ${share.toFixed(0)} % of its time, most at ${clock.at(top.start)} with ${top.busy.toFixed(1)} of ${top.there.toFixed(1)} people`
    + `${seconds ? `; for ${length(seconds)} everybody is` : ''}.`;
}

/** Hours with what was averaged over them, as a table. */
function hours(load) {
  const rows = new Map();
  for (const step of load) {
    const key = Math.floor(step.start / 3600);
    const row = rows.get(key) ?? {start: key * 3600, end: (key + 1) * 3600, busy: 0, there: 0};
    const seconds = step.end - step.start;
    row.busy += step.busy * seconds;
    row.there += step.there * seconds;
    rows.set(key, row);
  }
  return [...rows.values()].filter(row => row.there > 0 || row.busy > 0);
}

function draw(board) {
  const {clock} = desk;
  const load = board.crewLoad;
  most = Math.max(1, board.operators.length, ...load.map(step => Math.ceil(step.there)));
  area = svg('svg', {'class': 'area', 'preserveAspectRatio': 'none', 'aria-hidden': 'true', 'focusable': 'false'},
    svg('path', {class: 'busy-area', d: path(load, step => step.busy, true)}),
    svg('path', {class: 'there-line', d: path(load, step => step.there, false)}));
  const wasOpen = /** @type {HTMLDetailsElement | null} */ (document.getElementById('crew-load-more'))?.open ?? false;
  fill(byId('crew-load'),
    el('h3', {id: 'crew-load-head', text: 'Crew load'}),
    el('div', {class: 'plot', role: 'img', 'aria-label': `Crew load over time. ${sentence(load, clock)}`},
      el('div', {class: 'names', 'aria-hidden': 'true'},
        el('span', {class: 'busy'}, el('i'), 'people busy'), el('span', {class: 'there'}, el('i'), 'people there')),
      area,
      el('span', {class: 'scale most', 'aria-hidden': 'true', text: String(most)}),
      el('span', {class: 'scale none', 'aria-hidden': 'true', text: '0'})),
    el('details', {id: 'crew-load-more', prop: {open: wasOpen}},
      el('summary', {class: 'hint', text: sentence(load, clock)}),
      el('div', {class: 'scroller short', tabindex: '0', role: 'region', 'aria-label': 'Crew load by the hour'},
        el('table', {id: 'crew-load-table'},
          el('caption', {text: 'People busy and people there, averaged over the hour'}),
          el('thead', {}, el('tr', {}, ['Time', 'Busy', 'There', 'Share'].map((name, i) => el('th', {scope: 'col', class: i ? 'figure' : '', text: name})))),
          el('tbody', {}, hours(load).map(row => el('tr', {},
            el('th', {scope: 'row', text: clock.span(row.start, row.end)}),
            el('td', {class: 'figure', text: (row.busy / 3600).toFixed(1)}),
            el('td', {class: 'figure', text: (row.there / 3600).toFixed(1)}),
            el('td', {class: 'figure', text: row.there ? `${(100 * row.busy / row.there).toFixed(0)} %` : ''}))))))));
  follow();
}

/** Shows the same stretch of time as the chart. */
function follow() {
  const timeline = chart();
  if (!timeline || !area) {
    return;
  }
  const shown = timeline.getWindow();
  const start = (shown.start - desk.clock.originMillis) / 1000;
  const end = (shown.end - desk.clock.originMillis) / 1000;
  area.setAttribute('viewBox', `${start} 0 ${Math.max(1, end - start)} ${most}`);
  const {left, center} = timeline.body.domProps;
  area.style.left = `${left.width}px`;
  area.style.width = `${center.width}px`;
  /** @type {any} */ (area.parentNode).querySelector('.names').style.width = `${left.width}px`;
}

/** Follows the board and the chart's window. */
export function startCrewLoad() {
  hear('chart-shown', () => draw(desk.board));
  hear('window', follow);
  hear('chart-changed', follow);
}

/** The plan as a table: late jobs first, every row a way to the same actions as the chart. */

import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {CAUSES, counted, lateness} from '../base/words.js';
import {pinWords} from '../chart/bar.js';
import {desk, locked, select} from '../plan/desk.js';
import {openSection} from '../ask/job-panel.js';
import {by, fillRows, sortHead} from './table.js';
import {view} from './views.js';

/** Late jobs first, then those that are left out, then the others. */
export const trouble = job => job.placing ? job.placing.lateSeconds : 0.5;
const COLUMNS = [
  {key: 'id', name: 'Job', value: job => job.id},
  {key: 'name', name: 'Name', value: job => job.name},
  {key: 'late', name: 'Late', value: trouble},
  {key: 'due', name: 'Promise', value: job => job.promise?.due ?? null},
  {key: 'rig', name: 'Rig', value: job => job.placing?.rig ?? null},
  {key: 'place', name: 'Place', value: job => job.placing?.place ?? null, figure: true, more: 'lesser'},
  {key: 'start', name: 'Starts', value: job => job.placing?.start ?? null},
  {key: 'end', name: 'Ends', value: job => job.placing?.end ?? null, more: 'lesser'},
  {key: 'weight', name: 'Weight', value: job => job.weight, figure: true, more: 'lesser'},
  {key: 'pin', name: 'Pin', value: job => job.pin ? 1 : null},
  {key: 'article', name: 'Article', value: job => job.article, more: 'lesser'},
];

let order = {key: 'late', up: false};
let filter = '';
let stale = true;

function shownJobs() {
  const {value} = COLUMNS.find(column => column.key === order.key) ?? COLUMNS[0];
  const text = filter.trim().toLowerCase();
  return desk.board.jobs
    .filter(job => text === '' || `${job.id} ${job.name} ${job.article} ${job.placing?.rig ?? 'left out'}`.toLowerCase().includes(text))
    .map((job, i) => ({job, i}))
    .sort((one, other) => by(value, order.up)(one.job, other.job)
      || by(job => job.placing?.start ?? Infinity, true)(one.job, other.job) || one.i - other.i)
    .map(one => one.job);
}

/** What stands in the table for one job; also used for print. */
export function cellsOf(job) {
  const {clock} = desk;
  const {placing} = job;
  const late = placing?.lateSeconds ?? 0;
  return {
    name: job.name,
    article: job.article,
    rig: placing ? placing.rig : el('span', {class: 'chip late'}, icon('out'), `left out: ${CAUSES[job.leftOut?.cause] ?? ''}`),
    place: placing ? String(placing.place + 1) : '',
    start: placing ? clock.at(placing.start) : '',
    end: placing ? clock.at(placing.end) : '',
    due: job.promise ? [clock.at(job.promise.due), job.promise.must && el('span', {class: 'must-word'}, ' ', icon('must'), 'must')] : '',
    late: late > 0 ? el('span', {class: 'chip late'}, icon('late'), `late ${lateness(late)}`) : '',
    weight: String(job.weight),
    pin: job.pin ? el('span', {class: 'chip pinned'}, icon('pin'), pinWords(job.pin)) : '',
  };
}

function row(job, index) {
  const cells = cellsOf(job);
  const chosen = desk.selected === job.id;
  const stop = chosen || (index === 0 && !shownHas(desk.selected)) ? '0' : '-1';
  const press = (cls, text, name, run) => el('button', {'type': 'button', 'class': cls, 'tabindex': stop, 'aria-label': name, 'aria-current': chosen && cls.startsWith('open') ? 'true' : false, 'on': {click: run}, text});
  return el('tr', {'data': {job: job.id}, 'class': chosen ? 'selected' : ''},
    el('th', {scope: 'row'}, press('open link', job.id, `${job.id}, show its panel`, () => {
      select(job.id, {open: true});
    })),
    COLUMNS.slice(1).map(column => el('td', {class: `${column.figure ? 'figure ' : ''}${column.more ?? ''}`}, cells[column.key])),
    el('td', {class: 'row-actions'},
      press('move', 'Move', `Move ${job.id}`, () => tell('move-form', job.id)),
      press('why', 'Why', `Why ${job.id}`, () => {
        openSection('why');
        select(job.id, {open: true});
        byId('panel-job').focus();
      })));
}

const shownHas = id => id !== null && byId('view-jobs').querySelector(`tr[data-job="${CSS.escape(id)}"]`) !== null;

function heads() {
  fill(byId('jobs-heads'), COLUMNS.map(column => sortHead(column, order, sort)), el('th', {scope: 'col', class: 'row-actions', text: 'Actions'}));
}

function sort(key) {
  order = {key, up: order.key === key ? !order.up : key !== 'late'};
  heads();
  rows();
  /** @type {HTMLElement | null} */ (byId('jobs-heads').querySelector(`[data-sort="${key}"]`))?.focus();
}

function rows() {
  const jobs = shownJobs();
  const late = desk.board.figures.lateJobs;
  byId('jobs-caption').textContent = `${counted(jobs.length, 'job')}${filter ? ' match' : ''}, ${late} late, ${desk.board.figures.leftOut} left out. Times in ${desk.clock.zoneSentence()}.`;
  fillRows(byId('jobs-body'), jobs, row);
}

/** Arrows go up and down the rows; one row is a stop of the Tab key. */
function walk(event) {
  const from = /** @type {HTMLElement} */ (event.target).closest('tr');
  const step = {ArrowDown: 'nextElementSibling', ArrowUp: 'previousElementSibling'}[event.key];
  const edge = {Home: 'firstElementChild', End: 'lastElementChild'}[event.key];
  const to = step ? from?.[step] : edge ? byId('jobs-body')[edge] : null;
  if (to) {
    event.preventDefault();
    stopAt(to);
    to.querySelector('button')?.focus();
  } else if (event.key.toLowerCase() === 'm' && from && !event.ctrlKey && !locked()) {
    event.preventDefault();
    tell('move-form', from.dataset.job);
  }
}

function stopAt(row) {
  byId('jobs-body').querySelectorAll('button[tabindex="0"]').forEach(button => {
    button.tabIndex = -1;
  });
  row.querySelectorAll('button').forEach(button => {
    button.tabIndex = 0;
  });
}

function mark(id) {
  const body = byId('jobs-body');
  body.querySelectorAll('tr.selected').forEach(one => {
    one.classList.remove('selected');
    one.querySelector('button')?.removeAttribute('aria-current');
  });
  const chosen = id && body.querySelector(`tr[data-job="${CSS.escape(id)}"]`);
  if (chosen) {
    chosen.classList.add('selected');
    chosen.querySelector('button')?.setAttribute('aria-current', 'true');
    stopAt(chosen);
    return chosen;
  }
  return null;
}

function refresh() {
  if (view() === 'jobs' && desk.board && stale) {
    stale = false;
    const had = byId('jobs-body').contains(document.activeElement) ? document.activeElement?.closest('tr')?.dataset.job : null;
    rows();
    if (had) {
      byId('jobs-body').querySelector(`tr[data-job="${CSS.escape(had)}"] button`)?.focus();
    }
  }
}

/** Draws the view's frame and follows the board. */
export function startJobs() {
  fill(byId('view-jobs'),
    el('div', {class: 'bar-of-tools'}, el('h2', {id: 'jobs-head', text: 'Jobs'}),
      el('label', {for: 'jobs-filter', text: 'Show only'}),
      el('input', {id: 'jobs-filter', type: 'text', placeholder: 'id, name, article, rig, "left out"', on: {input: event => {
        filter = event.target.value;
        rows();
      }}})),
    el('div', {class: 'scroller tall', tabindex: '0', role: 'region', 'aria-label': 'Table of jobs'},
      el('table', {id: 'jobs-table'}, el('caption', {id: 'jobs-caption'}),
        el('thead', {}, el('tr', {id: 'jobs-heads'})), el('tbody', {id: 'jobs-body', on: {keydown: walk}}))));
  heads();
  hear('board', () => {
    stale = true;
    refresh();
  });
  hear('view', refresh);
  hear('select', ({id, show}) => {
    const chosen = mark(id);
    if (show && view() === 'jobs') {
      chosen?.scrollIntoView({block: 'nearest'});
    }
  });
}

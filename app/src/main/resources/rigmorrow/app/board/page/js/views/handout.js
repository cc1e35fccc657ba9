/** Hand out: files of the plan, versions, and what differs between two. */

import {read, Refusal, send} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {counted, lateness, number} from '../base/words.js';
import {change, orStale} from '../plan/changes.js';
import {desk, locked, select} from '../plan/desk.js';
import {view} from './views.js';

const FILES = [
  ['run-sheets.html', 'Run sheets', 'as a page to read or print'],
  ['run-sheets.pdf', 'Run sheets', 'PDF'],
  ['calendars.zip', 'Calendars', 'iCalendar, one for each rig and operator, zipped'],
  ['labels.pdf', 'Sample labels', 'PDF with bar codes'],
  ['plan.csv', 'Plan', 'CSV'],
  ['plan.json', 'Plan', 'JSON'],
  ['shot-list.json', 'Shot list', 'JSON, with promises, weights and pins as they are now'],
];

/** @type {any[]} */
let versions = [];

/** Number of the version that is being published; 0 for none. */
let publishing = 0;

const named = version => version.number === 0 ? 'The plan as it is now' : `Version ${version.number}${version.published ? ' (published)' : ''}: ${version.note || 'no note'}`;

/** "2026-11-27 13:15, UTC+01:00" of a time with its offset. */
function moment(at) {
  const found = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)[^+Z-]*(Z|[+-]\d\d:?\d\d)$/.exec(at);
  return found ? `${found[1]} ${found[2]}, UTC${found[3] === 'Z' ? '' : found[3].replace('-', '−')}` : at;
}

function downloads() {
  const pick = byId('download-version');
  const chosen = pick.value || '0';
  fill(pick, [{number: 0}, ...versions].map(version => el('option', {value: String(version.number), text: named(version)})));
  pick.value = versions.some(version => String(version.number) === chosen) ? chosen : '0';
  links();
}

function links() {
  const version = byId('download-version').value;
  const chosen = versions.find(one => String(one.number) === version);
  byId('stamp').textContent = `Every page says: ${chosen?.stamp ?? desk.board.stamp}`;
  fill(byId('downloads'), FILES.map(([name, title, kind]) => el('li', {}, el('a', {
    class: 'button', href: `/api/hand-out/${name}${version === '0' ? '' : `?version=${version}`}`,
    download: name.endsWith('.html') ? false : name, target: name.endsWith('.html') ? '_blank' : false, data: {name},
  }, el('strong', {text: title}), ` ${kind}${name.endsWith('.html') ? ', opens in a new tab' : ''}`))));
}

async function refresh() {
  try {
    versions = (await read('/api/versions')).versions;
    show();
  } catch (failure) {
    tell('failure', failure);
  }
}

function row(version) {
  const f = version.figures;
  return el('tr', {data: {version: version.number, published: String(version.published)}},
    el('th', {scope: 'row'}, String(version.number), ' ', version.published && el('span', {class: 'chip better'}, icon('yes'), 'published')),
    el('td', {text: version.note}),
    el('td', {text: moment(version.at)}),
    el('td', {class: 'figure', text: number(f.softPoints)}),
    el('td', {class: 'figure', text: f.lateJobs ? `${f.lateJobs}, ${lateness(f.lateSeconds)}` : '0'}),
    el('td', {class: 'figure', text: number(f.leftOut)}),
    el('td', {class: 'row-actions'},
      el('button', {'type': 'button', 'class': 'publish', 'disabled': version.published || publishing > 0, 'aria-label': `${publishing === version.number ? 'Publishing …' : 'Publish'} version ${version.number}`, 'text': publishing === version.number ? 'Publishing …' : 'Publish', 'on': {click: () => publish(version)}}),
      el('button', {'type': 'button', 'class': 'restore', 'disabled': locked(), 'aria-label': `Go back to it: version ${version.number}`, 'text': 'Go back to it', 'on': {click: () => restore(version)}})));
}

function show() {
  downloads();
  fill(byId('versions-holder'), versions.length === 0
    ? el('p', {class: 'hint', text: 'No version was put by yet.'})
    : el('div', {'class': 'scroller', 'tabindex': '0', 'role': 'region', 'aria-label': 'Versions'}, el('table', {id: 'versions'},
      el('caption', {text: 'Versions of the plan. The crew works from the published one.'}),
      el('thead', {}, el('tr', {}, ['Version', 'Note', 'Put by', 'Points', 'Late', 'Left out', 'Actions'].map((text, i) =>
        el('th', {scope: 'col', class: i > 2 && i < 6 ? 'figure' : '', text})))),
      el('tbody', {}, [...versions].reverse().map(row)))));
  for (const [id, fallback] of [['compare-before', versions.find(version => version.published)?.number ?? versions[0]?.number ?? 0], ['compare-after', 0]]) {
    const pick = byId(id);
    const chosen = pick.dataset.chosen ?? String(fallback);
    fill(pick, [{number: 0}, ...versions].map(version => el('option', {value: String(version.number), text: named(version)})));
    pick.value = [...pick.options].some(option => option.value === chosen) ? chosen : '0';
  }
  byId('compare').disabled = versions.length === 0;
}

async function putBy(note) {
  try {
    const version = await send('/api/versions', {revision: desk.board.revision, note});
    byId('version-note').value = '';
    done(`Put by as version ${version.number}.`);
  } catch (failure) {
    await orStale(failure).catch(other => tell('failure', other));
  }
  refresh();
}

async function publish(version) {
  // Everything that is handed out is written anew: that takes seconds.
  publishing = version.number;
  say(`Publishing version ${version.number}.`);
  show();
  try {
    await send(`/api/versions/${version.number}/publish`, {});
    done(`Version ${version.number} is published.`);
  } catch (failure) {
    tell('failure', failure);
  }
  publishing = 0;
  await refresh();
}

async function restore(version) {
  try {
    if (await change(`/api/versions/${version.number}/restore`)) {
      done(`The plan is version ${version.number} again. Undo takes it back.`);
    }
  } catch (failure) {
    tell('failure', failure);
  }
}

function done(text) {
  say(text);
  notice(text);
}

function moved(move) {
  return el('li', {data: {job: move.job}},
    el('p', {class: 'head'}, desk.jobs.has(move.job) ? el('button', {type: 'button', class: 'link', text: `${move.job} ${move.name}`, on: {click: () => {
      location.hash = 'plan';
      select(move.job, {show: true, open: true});
    }}}) : `${move.job} ${move.name}`),
    el('p', {text: move.sentence}));
}

/** So many jobs are read at a glance; more are a click away, by what happens to them. */
const FEW_MOVES = 6;

function grouped(moves) {
  /** @type {Map<string, any[]>} */
  const groups = new Map();
  moves.forEach(move => groups.set(move.group, [...groups.get(move.group) ?? [], move]));
  return [...groups].sort((one, other) => other[1].length - one[1].length || one[0].localeCompare(other[0])).map(([name, some]) =>
    el('details', {class: 'section', data: {group: name}, prop: {open: moves.length <= FEW_MOVES}},
      el('summary', {}, el('h4', {text: `${name}: ${counted(some.length, 'job')}`})),
      el('ul', {class: 'cards'}, some.map(moved))));
}

async function compare() {
  const before = byId('compare-before').value;
  const after = byId('compare-after').value;
  const holder = byId('difference');
  try {
    const answer = await read(`/api/versions/compare?before=${before}&after=${after}`);
    fill(holder, el('h3', {text: answer.moves.length ? `${counted(answer.moves.length, 'job')} elsewhere` : 'Every job is at the same place and time'}),
      answer.costs.length > 0 && el('ul', {class: 'bullets'}, answer.costs.map(text => el('li', {text}))),
      el('div', {id: 'moves'}, grouped(answer.moves)));
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    fill(holder, el('p', {class: 'note-broken', text: failure.message}));
  }
}

/** Draws the view's frame; asks for versions when it is looked at. */
export function startHandout() {
  const pick = (id, label) => el('div', {class: 'field'}, el('label', {for: id, text: label}),
    el('select', {id, on: {change: event => {
      event.target.dataset.chosen = event.target.value;
    }}}));
  fill(byId('view-handout'), el('h2', {id: 'handout-head', text: 'Hand out'}),
    el('div', {class: 'columns'},
      el('section', {'class': 'card', 'aria-labelledby': 'files-head'}, el('h3', {id: 'files-head', text: 'Files'}),
        el('div', {class: 'field'}, el('label', {for: 'download-version', text: 'Of'}), el('select', {id: 'download-version', on: {change: links}})),
        el('p', {id: 'stamp', class: 'hint'}),
        el('ul', {id: 'downloads'})),
      el('section', {'class': 'card', 'aria-labelledby': 'put-head'}, el('h3', {id: 'put-head', text: 'Put a version by'}),
        el('form', {on: {submit: event => {
          event.preventDefault();
          putBy(byId('version-note').value.trim());
        }}},
        el('div', {class: 'field'}, el('label', {for: 'version-note', text: 'Note'}), el('input', {id: 'version-note', type: 'text', maxlength: '200', placeholder: 'What is special about it'})),
        el('button', {id: 'version-put', type: 'submit', class: 'main', text: 'Put the plan by'})),
        el('h3', {class: 'apart', text: 'Compare two'}),
        pick('compare-before', 'From'), pick('compare-after', 'To'),
        el('button', {id: 'compare', type: 'button', text: 'Compare', on: {click: compare}}))),
    el('section', {'aria-label': 'Versions put by'}, el('div', {id: 'versions-holder'})),
    el('section', {'id': 'difference', 'aria-live': 'polite'}));
  const look = () => view() === 'handout' && desk.board && refresh();
  hear('view', look);
  hear('board', look);
}

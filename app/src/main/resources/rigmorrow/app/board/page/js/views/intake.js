/** Brings a shot list in: its problems beside the cells they are in, mended here or in the file. */

import {Refusal, send, sendFile} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {counted} from '../base/words.js';
import {change} from '../plan/changes.js';
import {desk, locked} from '../plan/desk.js';
import {drop} from '../plan/proposal.js';
import {dropOn} from './dropping.js';
import {fitTable} from './fit-table.js';
import {intakeTable} from './intake-table.js';
import {go, view} from './views.js';

/** @type {any} the IntakeView; null when there is none */
let intake = null;
let busy = false;
/** Cells that were changed and not sent yet, by "row:column". */
const mended = new Map();

async function work(ask) {
  if (busy) {
    return;
  }
  busy = true;
  byId('intake-failure').hidden = true;
  byId('intake').setAttribute('aria-busy', 'true');
  try {
    const answer = await ask();
    if (answer) {
      mended.clear();
      intake = answer;
      show();
      say(answer.problems.length ? `${counted(answer.problems.length, 'problem')} in ${answer.fileName}.` : `${answer.fileName} has no problems, ${counted(answer.jobs, 'job')}.`);
    }
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    byId('intake-failure').textContent = failure.message;
    byId('intake-failure').hidden = false;
  } finally {
    busy = false;
    byId('intake').setAttribute('aria-busy', 'false');
  }
}

/** @param {File} file */
function bring(file) {
  Object.assign(chosen, {delimiter: '', decimal: '', sheet: ''});
  go('import');
  return work(() => sendFile('/api/intake', file, file.name));
}

function sendCells() {
  const cells = [...mended].map(([key, value]) => {
    const [row, column] = key.split(':').map(Number);
    return {row, column, value};
  });
  return send(`/api/intake/${encodeURIComponent(intake.id)}/cells`, {cells});
}

function check() {
  return work(sendCells);
}

function options(data) {
  const text = name => data.get(name) || null;
  return work(async () => {
    if (mended.size > 0) {
      await sendCells(); // What was typed goes along.
    }
    return send(`/api/intake/${encodeURIComponent(intake.id)}/options`, {
      date: text('date'), days: data.get('days') ? Number(data.get('days')) : null, delimiter: text('delimiter'), decimal: text('decimal'), sheet: text('sheet'),
    });
  });
}

async function plan() {
  drop();
  try {
    if (await change(`/api/intake/${encodeURIComponent(intake.id)}/plan`)) {
      const text = `${intake.fileName} is planned. Undo takes it back.`;
      intake = null;
      show();
      go('plan');
      notice(text);
      say(text);
    }
  } catch (failure) {
    tell('failure', failure);
  }
}

function optionsForm() {
  const choose = (id, label, list) => el('div', {class: 'field'}, el('label', {for: id, text: label}),
    el('select', {id, name: id.slice(7)}, list.map(([value, text]) => el('option', {value, text, prop: {selected: chosen[id.slice(7)] === value}}))));
  return el('form', {id: 'intake-options', on: {submit: event => {
    event.preventDefault();
    const data = new FormData(event.target);
    for (const name of ['delimiter', 'decimal', 'sheet']) {
      chosen[name] = String(data.get(name) ?? '');
    }
    options(data);
  }}},
  el('div', {class: 'field'}, el('label', {for: 'intake-date', text: 'First day'}), el('input', {id: 'intake-date', name: 'date', type: 'date', value: intake.date, required: true})),
  el('div', {class: 'field'}, el('label', {for: 'intake-days', text: 'Days'}), el('input', {id: 'intake-days', name: 'days', type: 'number', min: '1', max: '31', value: String(intake.days), required: true})),
  choose('intake-delimiter', 'Columns parted by', [['', 'as found'], [',', 'comma'], [';', 'semicolon'], ['tab', 'tab']]),
  choose('intake-decimal', 'Decimal mark', [['', 'as found'], ['.', 'point'], [',', 'comma']]),
  el('div', {class: 'field'}, el('label', {for: 'intake-sheet', text: 'Sheet'}), el('input', {id: 'intake-sheet', name: 'sheet', type: 'text', value: chosen.sheet, placeholder: 'as found'})),
  el('button', {type: 'submit', text: 'Read again'}));
}

const chosen = {delimiter: '', decimal: '', sheet: ''};

function problems() {
  return el('section', {'aria-labelledby': 'problems-head'},
    el('h3', {id: 'problems-head'}, icon('warn'), ` ${counted(intake.problems.length, 'problem')}`),
    el('div', {'class': 'scroller short', 'tabindex': '0', 'role': 'region', 'aria-label': 'Problems'}, el('table', {id: 'intake-problems'},
      el('caption', {text: 'Everything that is wrong, at once. Rows are numbered as in the spreadsheet.'}),
      el('thead', {}, el('tr', {}, ['Where', 'Field', 'Value', 'What would be accepted'].map(text => el('th', {scope: 'col', text})))),
      el('tbody', {}, intake.problems.map(problem => el('tr', {data: {row: problem.row, column: problem.column}},
        el('th', {scope: 'row'}, problem.row > 0 && problem.column > 0 && byCell(problem)
          ? el('button', {type: 'button', class: 'link', text: problem.where, on: {click: () => byCell(problem)?.focus()}}) : problem.where),
        el('td', {text: problem.field}), el('td', {text: problem.value}), el('td', {text: problem.accepted})))))));
}

/** The field of a cell, while it is drawn; something that takes the focus nowhere until then. */
const byCell = problem => /** @type {HTMLElement | null} */ (document.querySelector(`#intake-table td[data-row="${problem.row}"][data-column="${problem.column}"] input`))
  ?? (intake.table?.rows.some(row => row.row === problem.row) ? {focus: () => {}} : null);

function show() {
  const holder = byId('intake');
  byId('drop').classList.toggle('small', intake !== null);
  if (!intake) {
    holder.replaceChildren();
    return;
  }
  const clean = intake.problems.length === 0;
  fill(holder,
    el('h3', {}, intake.fileName, ' ', el('span', {class: `chip ${clean ? 'better' : 'broken'}`}, icon(clean ? 'yes' : 'warn'),
      clean ? `no problems, ${counted(intake.jobs, 'job')}` : counted(intake.problems.length, 'problem'))),
    el('details', {prop: {open: true}}, el('summary', {text: 'How the file was read'}),
      el('ul', {id: 'intake-notes', class: 'bullets'}, intake.notes.map(text => el('li', {text}))), optionsForm()),
    !clean && problems(),
    !clean && intake.table && el('section', {'aria-labelledby': 'mend-head'},
      el('h3', {id: 'mend-head', text: 'Mend it here'}),
      intakeTable(intake, mended, count => {
        byId('intake-check').textContent = count ? `Check again with ${counted(count, 'changed cell')}` : 'Check again';
      }),
      el('div', {class: 'buttons'},
        el('button', {id: 'intake-check', type: 'button', class: 'main', text: 'Check again', on: {click: check}}),
        el('a', {id: 'annotated', class: 'button', href: `/api/intake/${encodeURIComponent(intake.id)}/annotated`, download: true, text: 'Download a copy with the problems beside the rows'}))),
    !clean && !intake.table && el('p', {class: 'hint', text: 'This file is no table: mend it where it was made and drop it again.'}),
    clean && el('div', {class: 'buttons'}, el('button', {id: 'plan-this', type: 'button', class: 'main', disabled: locked(), on: {click: plan}}, icon('go'), 'Plan this shot list'),
      el('span', {class: 'hint', text: 'It takes the place of the one on the board, planned by dispatch rules. It can be undone.'})),
    intake.fit && el('section', {'id': 'intake-fit', 'aria-labelledby': 'intake-fit-head'}, el('h3', {id: 'intake-fit-head', text: 'Which rig can take which job'}), fitTable(intake.fit, 'intake-fit-table')));
}

/** Draws the view's frame; files may be dropped on any view. */
export function startIntake() {
  const input = el('input', {id: 'file', type: 'file', accept: '.csv,.tsv,.txt,.xlsx,.xlsm,.json,.yaml,.yml', on: {change: event => {
    const file = event.target.files[0];
    if (file) {
      bring(file);
    }
    event.target.value = '';
  }}});
  fill(byId('view-import'), el('h2', {id: 'import-head', text: 'Import a shot list'}),
    el('div', {id: 'drop'}, el('p', {}, el('label', {for: 'file', text: 'Drop an XLSX, CSV or JSON file anywhere on this page, or choose one:'})), input),
    el('p', {id: 'intake-failure', class: 'note-broken', role: 'alert', hidden: true}),
    el('div', {'id': 'intake', 'aria-busy': 'false'}));
  dropOn('', 'Drop the shot list here', bring);
  hear('board', () => intake && view() === 'import' && desk.board && document.getElementById('plan-this')?.toggleAttribute('disabled', locked()));
}

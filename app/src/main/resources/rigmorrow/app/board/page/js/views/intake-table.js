/** The rows of a shot list with their problems beside the cells, to be mended. */

import {el} from '../base/dom.js';
import {counted} from '../base/words.js';
import {fillRows} from './table.js';

/**
 * @param {any} intake an IntakeView with a table
 * @param {Map<string, string>} mended what was changed, by "row:column"
 * @param {(count: number) => void} changed told how many cells are changed
 */
export function intakeTable(intake, mended, changed) {
  const {table} = intake;
  const wrong = new Map();
  for (const problem of intake.problems) {
    const key = `${problem.row}:${problem.column}`;
    wrong.set(key, [...wrong.get(key) ?? [], problem]);
  }
  const columns = Math.max(table.header.length, ...table.rows.map(row => row.cells.length));
  const head = Array.from({length: columns}, (none, i) => table.header[i] ?? '');
  const ofRow = row => wrong.get(`${row}:0`) ?? [];

  const cell = (row, column, value) => {
    const key = `${row}:${column}`;
    const bad = wrong.get(key) ?? [];
    const note = `problem-${row}-${column}`;
    const input = el('input', {
      'type': 'text', 'value': mended.get(key) ?? value, 'aria-label': `Row ${row}, ${head[column - 1] || `column ${column}`}`,
      'aria-invalid': bad.length ? 'true' : false, 'aria-describedby': bad.length ? note : false, 'size': String(Math.min(24, Math.max(6, value.length + 1))),
      'on': {input: event => {
        if (event.target.value === value) {
          mended.delete(key);
        } else {
          mended.set(key, event.target.value);
        }
        event.target.classList.toggle('mended', mended.has(key));
        changed(mended.size);
      }},
    });
    return el('td', {class: bad.length ? 'wrong' : '', data: {row, column}}, input,
      bad.length > 0 && el('div', {id: note, class: 'wrong-note'}, bad.map(problem => el('p', {text: `Accepted: ${problem.accepted}`}))));
  };
  const draw = row => el('tr', {data: {row: row.row}},
    el('th', {scope: 'row'}, String(row.row), ofRow(row.row).map(problem => el('div', {class: 'wrong-note', text: `${problem.field}: ${problem.accepted}`}))),
    Array.from({length: columns}, (none, i) => cell(row.row, i + 1, row.cells[i] ?? '')));
  const body = el('tbody');
  const made = el('div', {'class': 'scroller tall', 'tabindex': '0', 'role': 'region', 'aria-label': 'Rows of the file'},
    el('table', {id: 'intake-table'},
      el('caption', {text: table.rows.length < table.rowCount
        ? `${counted(table.rows.length, 'row')} of ${table.rowCount}: those with problems first.` : counted(table.rowCount, 'row')}),
      el('thead', {}, el('tr', {}, el('th', {scope: 'col', text: 'Row'}), head.map((text, i) => el('th', {scope: 'col'}, text || `Column ${i + 1}`,
        (wrong.get(`${table.headerRow}:${i + 1}`) ?? []).map(problem => el('div', {class: 'wrong-note', text: problem.accepted})))))),
      body));
  fillRows(body, table.rows, draw);
  return made;
}

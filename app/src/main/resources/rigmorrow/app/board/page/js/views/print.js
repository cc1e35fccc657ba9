/** The whole plan on paper: figures, both charts as drawn by the server, and the table of jobs. */

import {byId, el, fill} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {desk} from '../plan/desk.js';
import {by, fillRows} from './table.js';
import {cellsOf, trouble} from './jobs.js';

const HEADS = ['Job', 'Name', 'Late', 'Promise', 'Rig', 'Place', 'Starts', 'Ends', 'Weight', 'Pin', 'Article'];

function picture(way, title) {
  return el('figure', {}, el('figcaption', {text: title}),
    el('img', {src: `/api/chart.svg?by=${way}&revision=${desk.board.revision}`, alt: title, data: {by: way}}));
}

/** Pictures come with each board, because a browser does not wait for them once it prints. */
function pictures() {
  fill(byId('print-pictures'), picture('rig', 'By rig'), picture('crew', 'By operator'));
}

function table() {
  const jobs = [...desk.board.jobs].sort((one, other) => by(trouble, false)(one, other)
    || by(job => job.placing?.start ?? null, true)(one, other));
  fillRows(byId('print-body'), jobs, job => {
    const cells = cellsOf(job);
    return el('tr', {}, el('th', {scope: 'row', text: job.id}),
      ['name', 'late', 'due', 'rig', 'place', 'start', 'end', 'weight', 'pin', 'article'].map(key => el('td', {}, cells[key])));
  }, true);
  byId('print-stamp').textContent = desk.board.stamp;
  byId('print-where').textContent = `All jobs, late ones first. Times in ${desk.clock.zoneSentence()}.`;
}

/** Fits the sheet to the board, and prints. */
export function startPrint() {
  fill(byId('print-sheet'), el('div', {id: 'print-pictures'}),
    el('table', {id: 'print-table'}, el('caption', {id: 'print-where'}),
      el('thead', {}, el('tr', {}, el('th', {id: 'print-stamp', colspan: String(HEADS.length), scope: 'colgroup'})), el('tr', {}, HEADS.map(text => el('th', {scope: 'col', text})))), el('tbody', {id: 'print-body'})));
  let waiting = 0;
  hear('board', () => {
    byId('print-pictures').replaceChildren();
    byId('print-body').replaceChildren();
    clearTimeout(waiting);
    waiting = window.setTimeout(pictures, 400);
  });
  addEventListener('beforeprint', () => {
    if (byId('print-pictures').childElementCount === 0) {
      pictures();
    }
    table();
  });
  byId('print').addEventListener('click', async () => {
    pictures();
    await Promise.all([...document.querySelectorAll('#print-pictures img')].map(image =>
      /** @type {HTMLImageElement} */ (image).decode().catch(() => null)));
    print();
  });
}

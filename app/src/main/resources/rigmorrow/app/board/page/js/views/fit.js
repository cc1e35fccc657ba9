/** The fit check of the board's shot list. */

import {read, Refusal} from '../base/api.js';
import {byId, el, fill} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {desk} from '../plan/desk.js';
import {fitTable} from './fit-table.js';
import {view} from './views.js';

let shown = -1;

async function show() {
  const {revision} = desk.board;
  if (shown === revision) {
    return;
  }
  shown = revision;
  const holder = byId('fit-holder');
  try {
    const fit = await read('/api/fit');
    if (shown === revision) {
      fill(holder, fitTable(fit, 'fit-table'));
    }
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    shown = -1;
    fill(holder, el('p', {class: 'note-broken', text: failure.message}));
  }
}

/** Draws the view's frame; asks when it is looked at. */
export function startFit() {
  fill(byId('view-fit'), el('h2', {id: 'fit-head', text: 'Fit check'}),
    el('p', {class: 'hint', text: 'Which rig can take which job. A "no" opens to all its reasons.'}), el('div', {id: 'fit-holder'}));
  const look = () => view() === 'fit' && desk.board && show();
  hear('board', look);
  hear('view', look);
}

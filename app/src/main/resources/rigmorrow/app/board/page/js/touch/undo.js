/** One step back and one step forward, with what it is in the button's text. */

import {byId} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {change} from '../plan/changes.js';
import {desk, locked} from '../plan/desk.js';
import {drop} from '../plan/proposal.js';

let busy = false;

async function step(path, word, sentence) {
  if (busy || !sentence || locked()) {
    say(locked() ? 'A search runs: the plan cannot be touched.' : `There is nothing to ${word.toLowerCase()}.`);
    return;
  }
  busy = true;
  drop();
  try {
    const board = await change(path);
    if (board) {
      say(`${word === 'Undo' ? 'Undone' : 'Done again'}: ${sentence}.`);
      notice(`${word === 'Undo' ? 'Undone' : 'Done again'}: ${sentence}.`);
    }
  } catch (failure) {
    tell('failure', failure);
  } finally {
    busy = false;
  }
}

/** Takes the last step back. */
export function undo() {
  return step('/api/undo', 'Undo', desk.board.undo);
}

/** Does the last step that was taken back again. */
export function redo() {
  return step('/api/redo', 'Redo', desk.board.redo);
}

function show(id, word, sentence, keys) {
  const button = byId(id);
  button.disabled = !sentence || locked();
  button.querySelector('.text').textContent = sentence ? `${word}: ${sentence}` : word;
  button.title = sentence ? `${word}: ${sentence} (${keys})` : `Nothing to ${word.toLowerCase()} (${keys})`;
}

/** Wires the buttons. */
export function startUndo() {
  byId('undo').addEventListener('click', undo);
  byId('redo').addEventListener('click', redo);
  hear('board', board => {
    show('undo', 'Undo', board.undo, 'Ctrl+Z');
    show('redo', 'Redo', board.redo, 'Ctrl+Y');
  });
}

/** The keyboard: keys of the chart, and keys of the page that work wherever nobody writes. */

import {byId, writing} from '../base/dom.js';
import {tell} from '../base/bus.js';
import {recall, remember} from '../base/keep-in-mind.js';
import {chart} from '../chart/chart.js';
import {currentBar, focusBar, neighbour} from '../chart/focus.js';
import {hidePeek} from '../chart/peek.js';
import {scrollsRows} from '../chart/scroll.js';
import {fitDay, pan, zoom} from '../chart/zoom.js';
import {desk, locked, select} from '../plan/desk.js';
import {drop, proposal, propose} from '../plan/proposal.js';
import {go, view} from '../views/views.js';
import {redo, undo} from './undo.js';
import {beginMove, isMoving, moveKey} from './moving.js';

/** True when single letters are keys; people who speak to their computer switch that off. */
let single = recall('single-keys') !== 'off';

/** @returns {boolean} whether single letters are keys */
export function singleKeys() {
  return single;
}

/** @param {boolean} on */
export function setSingleKeys(on) {
  single = on;
  remember('single-keys', on ? null : 'off');
}

const WALK = new Set(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End']);

function chartKey(event) {
  if (event.ctrlKey || event.metaKey || event.altKey || !chart() || scrollsRows(event)) {
    return false;
  }
  if (moveKey(event)) {
    return true;
  }
  const bar = currentBar();
  if (!bar) {
    return false;
  }
  const job = bar.of.id ?? bar.of.job;
  if (event.shiftKey && (event.key === 'ArrowLeft' || event.key === 'ArrowRight')) {
    pan(event.key === 'ArrowLeft' ? -0.25 : 0.25);
  } else if (WALK.has(event.key)) {
    const next = neighbour(bar, event.key);
    if (next) {
      focusBar(next);
    }
  } else if (event.key === 'PageUp' || event.key === 'PageDown') {
    pan(event.key === 'PageUp' ? -0.8 : 0.8);
  } else if (event.key === 'Enter' || event.key === ' ') {
    select(job, {open: true});
    byId('panel-job').focus();
  } else if (event.key === 'Delete') {
    if (!locked()) {
      propose({kind: 'LEAVE_OUT', job}, 'form');
    }
  } else if (single && event.key.toLowerCase() === 'm') {
    beginMove(job);
  } else {
    return false;
  }
  return true;
}

function pageKey(event) {
  if (document.querySelector('dialog[open]')) {
    return false;
  }
  const ctrl = event.ctrlKey || event.metaKey;
  const key = event.key.toLowerCase();
  if (event.key === 'Escape' && (proposal() || isMoving())) {
    drop();
    tell('drop', null);
    return true;
  }
  if (event.key === 'Escape') {
    hidePeek();
    return false;
  }
  if (ctrl && !event.altKey && !writing(event.target)) {
    if (key === 'z') {
      (event.shiftKey ? redo : undo)();
      return true;
    }
    if (key === 'y') {
      redo();
      return true;
    }
    return false;
  }
  if (!single || ctrl || event.altKey || writing(event.target)) {
    return false;
  }
  return singleKey(event.key);
}

function singleKey(key) {
  if (key === '/') {
    byId('find').focus();
  } else if (key === '?') {
    tell('help', null);
  } else if (view() !== 'plan' || !chart()) {
    return false;
  } else if (key === '+' || key === '=') {
    zoom(1);
  } else if (key === '-') {
    zoom(-1);
  } else if (key === '0') {
    fitDay();
  } else {
    return false;
  }
  return true;
}

/** Wires the keyboard. */
export function startKeys() {
  byId('chart').addEventListener('keydown', event => {
    if (chartKey(event)) {
      event.preventDefault();
      event.stopPropagation();
    }
  });
  addEventListener('keydown', event => {
    if (!event.defaultPrevented && desk.board && pageKey(event)) {
      event.preventDefault();
    }
  });
  // Not at the focus: who only tabs past the field must stay where they are.
  byId('find').addEventListener('input', () => {
    if (view() !== 'plan' && view() !== 'jobs') {
      go('plan');
    }
  });
}

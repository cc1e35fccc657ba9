/** Draws a proposal over the plan: where jobs would be, and the promise of the chosen job. */

import {el} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {lateness} from '../base/words.js';
import {desk} from '../plan/desk.js';
import {proposal} from '../plan/proposal.js';
import {choice, drawnBar, onBar} from './chart.js';
import {lay} from './overlay.js';

/** @type {Set<string>} jobs that would be elsewhere */
let leaving = new Set();

function ghosts() {
  const open = proposal();
  const tried = open?.tried;
  const placings = tried?.allowed && choice.by === 'rig' ? tried.placings : [];
  lay('ghosts', placings.map(placing => {
    const own = placing.job === open?.touch.job;
    const late = placing.lateSeconds > 0;
    return {
      row: `rig:${placing.rig}`, start: placing.start, end: placing.end,
      made: el('div', {class: `ghost-bar${own ? ' own' : ''}${late ? ' late' : ''}`, data: {ghost: placing.job}},
        el('span', {text: `${placing.job} ${desk.clock.clock(placing.start)}${late ? ` late ${lateness(placing.lateSeconds)}` : ''}`})),
    };
  }));
  const out = tried?.allowed ? tried.leftOut.filter(id => desk.jobs.get(id)?.placing) : [];
  const now = new Set([...placings.map(placing => placing.job), ...out]);
  for (const id of new Set([...leaving, ...now])) {
    drawnBar(`job:${id}`)?.classList.toggle('leaving', now.has(id));
  }
  leaving = now;
}

/** Marks where a moved job would go. @param {{rig: string, at: number} | null} target */
export function markPlace(target) {
  lay('insert', target === null ? [] : [{
    row: `rig:${target.rig}`, start: target.at, end: target.at, made: el('div', {class: 'insert-mark'}),
  }]);
}

function promise() {
  const job = desk.selected ? desk.jobs.get(desk.selected) : null;
  if (!job?.promise || !job.placing || choice.by !== 'rig') {
    lay('promise', []);
    return;
  }
  const {due} = job.promise;
  const row = `rig:${job.placing.rig}`;
  const late = job.placing.lateSeconds;
  const name = `${job.promise.must ? 'must be by' : 'promised'} ${desk.clock.at(due)}`;
  const made = el('div', {class: `promise-mark${late ? ' missed' : ''}`},
    el('span', {text: late ? `${name}, late ${lateness(late)}` : name}));
  lay('promise', [{row, start: due, end: late ? due + late : due, made}]);
}

/** Follows proposals and the selection. */
export function startGhosts() {
  onBar((made, bar) => {
    if (bar.kind === 'job') {
      made.classList.toggle('leaving', leaving.has(bar.of.id));
    }
  });
  hear('proposal', open => {
    ghosts();
    if (open === null) {
      markPlace(null);
    }
  });
  hear('select', promise);
  hear('chart-shown', () => {
    ghosts();
    promise();
  });
}

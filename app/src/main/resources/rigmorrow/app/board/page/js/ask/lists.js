/** The side's lists: jobs left out, troubles, pins. */

import {read, Refusal} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {CAUSES, counted} from '../base/words.js';
import {pinWords} from '../chart/bar.js';
import {desk, locked, rigName, select} from '../plan/desk.js';
import {propose} from '../plan/proposal.js';
import {countTab, openTab, tab} from '../views/tabs.js';

const opener = job => el('button', {
  type: 'button', class: 'link', text: `${job.id} ${job.name}`, on: {click: () => select(job.id, {show: true, open: true})},
});

function leftOut() {
  const jobs = desk.board.jobs.filter(job => job.leftOut);
  countTab('out', 'Left out', jobs.length);
  fill(byId('panel-out'), el('h2', {text: jobs.length ? `${counted(jobs.length, 'job')} left out` : 'Nothing is left out'}),
    el('ul', {id: 'out-list', class: 'cards'}, jobs.map(job => el('li', {data: {job: job.id, cause: job.leftOut.cause}},
      el('p', {class: 'head'}, opener(job), el('span', {class: 'chip late', text: CAUSES[job.leftOut.cause] ?? job.leftOut.cause})),
      el('ul', {class: 'bullets'}, job.leftOut.sentences.map(text => el('li', {text}))),
      el('p', {class: 'hint', text: `Weight ${job.weight}${job.promise ? `, promised ${desk.clock.at(job.promise.due)}` : ''}`}),
      (job.leftOut.cause === 'NO_ROOM' || job.leftOut.cause === 'HELD_BACK') && el('button', {
        'type': 'button', 'class': 'take-in', 'disabled': locked(), 'aria-label': `Take ${job.id} in`,
        'on': {click: () => propose({kind: 'TAKE_IN', job: job.id}, 'form')},
      }, icon('yes'), 'Take in')))));
}

/** What can be done with all of them at once. */
function planAgain() {
  return el('div', {class: 'actions'},
    el('button', {id: 'trouble-search', type: 'button', class: 'main', disabled: locked(), on: {click: () => openTab('search')}}, icon('go'), 'Plan again'),
    el('p', {class: 'hint', text: 'A search looks for a better order of all jobs, around your pins.'}));
}

function moveThere(trouble) {
  const where = `${rigName(trouble.rig)}, place ${trouble.place + 1}`;
  return el('button', {
    'type': 'button', 'class': 'move-there', 'disabled': locked(), 'aria-label': `Move ${trouble.job} to ${where}`,
    'on': {click: () => propose({kind: 'MOVE', job: trouble.job, rig: trouble.rig, place: trouble.place}, 'form')},
  }, icon('go'), `Move to ${where}`);
}

let troubledRevision = -1;

/** Asks for troubles when their tab is looked at: every one is decoded. */
async function troubles() {
  const panel = byId('panel-troubles');
  const {revision} = desk.board;
  if (troubledRevision === revision) {
    return;
  }
  troubledRevision = revision;
  fill(panel, el('h2', {text: 'Troubles'}), el('p', {class: 'soft', text: 'Working out what stands in the way …'}));
  try {
    const answer = await read('/api/troubles');
    if (troubledRevision !== revision) {
      return;
    }
    fill(panel, el('h2', {text: answer.troubles.length ? `${counted(answer.troubles.length, 'job')} in trouble` : 'No job is late or left out'}),
      answer.troubles.length > 0 && planAgain(),
      el('ul', {id: 'trouble-list', class: 'cards'}, answer.troubles.map(trouble => el('li', {data: {job: trouble.job}},
        el('p', {class: 'head'}, opener({id: trouble.job, name: trouble.name})),
        el('p', {text: trouble.sentence}),
        trouble.rig !== null && moveThere(trouble)))));
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    troubledRevision = -1;
    fill(panel, el('h2', {text: 'Troubles'}), el('p', {class: 'note-broken', text: failure.message}));
  }
}

function pins() {
  const jobs = desk.board.jobs.filter(job => job.pin);
  countTab('pins', 'Pins', jobs.length);
  fill(byId('panel-pins'), el('h2', {text: jobs.length ? counted(jobs.length, 'pin') : 'Nothing is pinned'}),
    el('p', {class: 'hint', text: 'A search leaves pinned jobs where they are pinned.'}),
    el('ul', {id: 'pin-list', class: 'cards'}, jobs.map(job => el('li', {data: {job: job.id}},
      el('p', {class: 'head'}, opener(job)),
      el('p', {}, el('span', {class: 'chip pinned'}, icon('pin'), pinWords(job.pin))),
      el('button', {
        'type': 'button', 'class': 'unpin', 'disabled': locked(), 'aria-label': `Take the pin off ${job.id}`,
        'on': {click: () => propose({kind: 'RELEASE', job: job.id}, 'form')},
      }, icon('close'), 'Take off')))));
}

/** Follows the board and the tabs. */
export function startLists() {
  hear('board', board => {
    leftOut();
    pins();
    const troubled = board.jobs.filter(job => job.leftOut || job.placing?.lateSeconds > 0).length;
    countTab('troubles', 'Troubles', troubled);
    if (tab() === 'troubles' && !byId('side').hidden) {
      troubles();
    }
  });
  hear('tab', name => name === 'troubles' && desk.board && troubles());
}

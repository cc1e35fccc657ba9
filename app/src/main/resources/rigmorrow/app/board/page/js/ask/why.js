/** Why a job is where it is, and what every other rig would cost; asked for when it is looked at. */

import {read, Refusal} from '../base/api.js';
import {el, fill, icon} from '../base/dom.js';
import {desk, locked, rigName} from '../plan/desk.js';
import {propose} from '../plan/proposal.js';
import {section} from './job-panel.js';

/** @type {AbortController | null} */
let asked = null;
/** @type {{key: string, answer: any} | null} the last answer, so that drawing the panel anew asks no more */
let known = null;

const WORDS = {BETTER: ['better', 'Better'], EQUAL: ['equal', 'The same'], WORSE: ['worse', 'Worse']};

function rigs(job, answer) {
  return el('ul', {id: 'why-rigs'}, answer.rigs.map(rig => {
    const here = job.placing?.rig === rig.rig;
    const [cls, word] = WORDS[rig.standing] ?? [];
    return el('li', {data: {rig: rig.rig}},
      el('h4', {}, rigName(rig.rig), here && ' (here)', ' ', cls && !here && el('span', {class: `chip ${cls}`}, icon(cls), word)),
      el('p', {text: rig.sentence}),
      rig.place !== null && !(here && rig.place === job.placing.place) && el('button', {
        'type': 'button', 'class': 'move-there', 'disabled': locked(), 'aria-label': `Move there, place ${rig.place + 1}: ${job.id} to ${rigName(rig.rig)}`,
        'on': {click: () => propose({kind: 'MOVE', job: job.id, rig: rig.rig, place: rig.place}, 'form')},
      }, icon('go'), `Move there, place ${rig.place + 1}`));
  }));
}

function answerOf(job, answer) {
  return [
    el('div', {id: 'why-sections'}, answer.sections.map(part => [
      el('h4', {text: part.heading}),
      el('ul', {class: 'bullets'}, part.sentences.map(text => el('li', {text}))),
    ])),
    answer.rigs.length > 0 && [el('h4', {class: 'apart', text: 'What each rig would cost'}), rigs(job, answer)],
  ];
}

async function ask(job, holder) {
  const key = `${desk.board.revision} ${job.id}`;
  if (known?.key === key) {
    fill(holder, answerOf(job, known.answer));
    return;
  }
  asked?.abort();
  asked = new AbortController();
  fill(holder, el('p', {class: 'soft', text: 'Working out the plan with this job elsewhere …'}));
  try {
    const answer = await read(`/api/jobs/${encodeURIComponent(job.id)}/why`, asked.signal);
    known = {key, answer};
    fill(holder, answerOf(job, answer));
  } catch (failure) {
    if (failure instanceof Refusal) {
      fill(holder, el('p', {class: 'note-broken', text: failure.message}));
    } else if (failure.name !== 'AbortError') {
      throw failure;
    }
  }
}

/**
 * A section that asks when it is opened.
 *
 * @param {any} job a JobView
 */
export function why(job) {
  const holder = el('div', {'id': 'why', 'aria-live': 'polite'});
  const made = section('why', job.placing ? 'Why here, and what other rigs would cost' : 'Why it is left out', holder);
  const look = () => made.open && holder.childElementCount === 0 && ask(job, holder);
  made.addEventListener('toggle', look);
  look();
  return made;
}

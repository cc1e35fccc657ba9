/** The scenarios: from a file, or made here; each change goes through the same reader as a file. */

import {send, sendFile} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {say} from '../base/live.js';
import {counted} from '../base/words.js';
import {dropOn} from '../views/dropping.js';
import {changeForm, fillChoices} from './change-form.js';
import {failureLine, orSay, problemTable} from './problems.js';

/** @type {any} the WhatIfView that is drawn */
let look = null;
let busy = false;
/** @type {Promise<void>} resolved when no change of the scenarios is under way */
let choosing = Promise.resolve();

/** Waits until no change of the scenarios is under way: what is asked about the old ones meanwhile would be refused. */
export function settled() {
  return choosing;
}

/** Sends something that changes the scenarios, and takes what there is then. */
async function choose(work) {
  if (busy) {
    return false;
  }
  busy = true;
  let over = () => {};
  choosing = new Promise(resolve => {
    over = resolve;
  });
  try {
    const answer = await orSay('scenario-failure', work);
    if (answer === null) {
      again();
      return false;
    }
    taken(answer);
    say(answer.refused ? `${counted(answer.refused.problems.length, 'problem')} with ${answer.refused.what}; nothing was taken.`
      : `${counted(answer.scenarios.scenarios.length, 'scenario')} to compare.`);
    return answer.refused === null;
  } finally {
    busy = false;
    over();
  }
}

let taken = _next => {};
let again = () => {};

const number = () => look?.scenarios?.number ?? 0;

/** @param {File} file */
function bring(file) {
  if (look?.days === 'READY') {
    choose(() => sendFile('/api/whatif/scenarios', file, file.name));
  }
}

/**
 * The panel, to be drawn once.
 *
 * @param {(next: any) => void} take takes a WhatIfView
 * @param {() => void} ask asks for one
 */
export function scenarioPanel(take, ask) {
  taken = take;
  again = ask;
  dropOn('whatif', 'Drop the scenario file here', bring);
  return el('section', {'class': 'card', 'id': 'scenarios', 'aria-labelledby': 'scenarios-head'},
    el('h3', {id: 'scenarios-head', text: 'Scenarios'}),
    el('div', {id: 'scenarios-now'}),
    el('p', {id: 'scenario-drop'}, el('label', {for: 'scenario-file', text: 'Drop a scenario file (YAML or JSON) on this page, or choose one:'}),
      el('input', {id: 'scenario-file', type: 'file', accept: '.yaml,.yml,.json', on: {change: event => {
        const file = event.target.files[0];
        if (file) {
          bring(file);
        }
        event.target.value = '';
      }}})),
    failureLine('scenario-failure'),
    el('div', {id: 'scenario-refused'}),
    changeForm(body => choose(() => send('/api/whatif/scenarios/add', {number: number(), ...body}))));
}

/**
 * @param {any} next a WhatIfView
 * @param {boolean} running true while they are being compared and stay as they are
 */
export function drawScenarios(next, running) {
  look = next;
  const focus = document.activeElement instanceof HTMLElement ? document.activeElement.dataset.remove : undefined;
  const list = next.scenarios;
  fill(byId('scenarios-now'),
    list ? [el('p', {}, el('strong', {text: list.name}), el('span', {class: 'soft', text: ` · ${list.fileName}`})),
      list.scenarios.length === 0 && el('p', {class: 'hint', text: 'There is no scenario left in it. Add one, or compare one more of each.'}),
      el('ul', {id: 'scenario-list', class: 'cards'}, list.scenarios.map(one => el('li', {class: 'head', data: {scenario: one.name}},
        el('span', {}, one.title, one.price && el('span', {class: 'soft', text: ` · ${one.price}`})),
        el('button', {'type': 'button', 'class': 'remove quiet', 'disabled': running, 'data': {remove: one.name}, 'aria-label': `Remove: ${one.title}`, 'title': 'Compare it no longer', 'on': {click: () => remove(one.name)}}, icon('close'))))),
      el('p', {}, el('a', {id: 'scenario-download', href: '/api/whatif/scenarios.yaml', download: 'scenarios.yaml', text: 'Download as a scenario file'}))]
      : el('p', {class: 'hint', text: 'There are none yet. Choose a file, or make the usual ones here.'}));
  fill(byId('scenario-refused'), next.refused && [
    el('p', {class: 'note-broken'}, icon('warn'), ` ${next.refused.what}: ${counted(next.refused.problems.length, 'problem')}, so nothing was taken.`),
    problemTable('scenario-problems', 'Everything that is wrong, at once', next.refused.problems)]);
  for (const field of document.querySelectorAll('#scenario-file, #change-add')) {
    /** @type {HTMLButtonElement} */ (field).disabled = running;
  }
  fillChoices(next.floor, next.scenarios);
  if (focus !== undefined) {
    byId('scenarios').querySelector('.remove')?.focus();
  }
}

function remove(name) {
  choose(() => send('/api/whatif/scenarios/remove', {number: number(), name}));
}

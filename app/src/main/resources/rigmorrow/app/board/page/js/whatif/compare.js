/** How the scenarios are compared: effort, seeds, what besides; start, follow, stop. */

import {Refusal, send} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {tell} from '../base/bus.js';
import {say} from '../base/live.js';
import {failureLine, orSay} from './problems.js';
import {settled} from './scenarios.js';

const WAIT_MILLIS = 350;
const CONFLICT = 409;
const LOCKED = 423;

/** @type {any} the WhatIfView that is drawn */
let look = null;
let state = 'NONE';
let timer = 0;
let turn = 0;
/** Asks for what there is now. */
let again = () => {};

/** What the form says; null while it says nothing that can be sent. */
function wish() {
  const form = byId('compare-form');
  if (!look?.scenarios || !form.checkValidity()) {
    return null;
  }
  const timed = byId('effort-by-seconds').checked;
  return {
    number: look.scenarios.number,
    seconds: timed ? Number(byId('effort-seconds').value) : null,
    steps: timed ? null : Number(byId('effort-steps').value),
    seeds: Number(byId('seeds').value),
    demand: byId('demand').value.split(/[\s,;]+/).filter(text => text !== '').map(Number),
    again: byId('again').checked,
    oneMore: byId('one-more').checked,
  };
}

/** Asks what it would take, when nobody has typed for a moment. */
function estimate() {
  clearTimeout(timer);
  byId('effort-seconds').disabled = !byId('effort-by-seconds').checked;
  byId('effort-steps').disabled = byId('effort-by-seconds').checked;
  const mine = ++turn;
  timer = window.setTimeout(async () => {
    await settled();
    if (mine !== turn) {
      return;
    }
    const body = wish();
    const line = byId('estimate');
    if (state === 'RUNNING' || body === null) {
      line.textContent = look?.scenarios ? '' : 'Choose scenarios first.';
      return;
    }
    const answer = await orSay('compare-failure', () => estimated(body, mine));
    if (mine === turn && state !== 'RUNNING') {
      line.textContent = answer?.sentence ?? '';
    }
  }, WAIT_MILLIS);
}

/**
 * What it would take. That another tab has chosen other scenarios, or has begun a comparison, is no failure: what there
 * is then is drawn, and asked about, when it comes. Nor is anything that was asked before something else.
 *
 * @param {any} body of the request
 * @param {number} mine turn of the question
 * @returns {Promise<any>} null where there is no answer any more
 */
async function estimated(body, mine) {
  try {
    return await send('/api/whatif/estimate', body);
  } catch (failure) {
    const overtaken = failure instanceof Refusal && (failure.status === CONFLICT || failure.status === LOCKED);
    if (overtaken) {
      again();
    }
    if (overtaken || mine !== turn) {
      return null;
    }
    throw failure;
  }
}

/**
 * The panel, to be drawn once.
 *
 * @param {(next: any) => void} take takes a WhatIfView
 * @param {() => void} ask asks for one
 * @param {(progress: any) => void} follow takes a ComparisonView
 */
export function comparePanel(take, ask, follow) {
  again = ask;
  const start = async event => {
    event.preventDefault();
    const body = wish();
    if (body !== null) {
      const answer = await orSay('compare-failure', () => send('/api/whatif/compare', body));
      if (answer === null) {
        ask();
      } else {
        follow(answer);
      }
    }
  };
  const stop = async () => {
    try {
      follow(await send('/api/whatif/stop', {}));
    } catch (failure) {
      tell('failure', failure);
    }
  };
  const tick = (id, text) => el('label', {class: 'tick', for: id}, el('input', {id, type: 'checkbox'}), text);
  return el('section', {'class': 'card', 'id': 'compare-panel', 'aria-labelledby': 'compare-head'},
    el('h3', {id: 'compare-head', text: 'Compare'}),
    el('form', {id: 'compare-form', on: {submit: start, input: estimate}},
      el('fieldset', {class: 'parts'}, el('legend', {text: 'Each plan stops after'}),
        el('label', {class: 'tick'}, el('input', {id: 'effort-by-seconds', type: 'radio', name: 'effort', prop: {checked: true}}), 'time'),
        el('div', {class: 'field'}, el('label', {for: 'effort-seconds', text: 'Seconds'}), el('input', {id: 'effort-seconds', type: 'number', min: '1', max: '3600', value: '2', required: true})),
        el('label', {class: 'tick'}, el('input', {id: 'effort-by-steps', type: 'radio', name: 'effort'}), 'steps, the same on any machine'),
        el('div', {class: 'field'}, el('label', {for: 'effort-steps', text: 'Steps'}), el('input', {id: 'effort-steps', type: 'number', min: '1', max: '1000000000', value: '3000', required: true}))),
      el('div', {class: 'parts'},
        el('div', {class: 'field'}, el('label', {for: 'seeds', text: 'Seeds'}), el('input', {id: 'seeds', type: 'number', min: '1', max: '100', value: '1', required: true})),
        el('div', {class: 'field'}, el('label', {for: 'demand', text: 'Other demands to plan too, %'}), el('input', {id: 'demand', type: 'text', placeholder: '-20, 20', pattern: '[\\s\\d,;.+\\-]*', autocomplete: 'off'}))),
      tick('one-more', 'What to buy first: one more of each rig, operator and piece of kit besides'),
      tick('again', 'How much is luck: the floor as it is once more with other seeds'),
      el('p', {id: 'estimate', role: 'status'}),
      failureLine('compare-failure'),
      el('div', {class: 'buttons'},
        el('button', {id: 'compare-start', type: 'submit', class: 'main', disabled: true}, icon('go'), el('span', {id: 'compare-word', text: 'Compare'})),
        el('button', {id: 'compare-stop', type: 'button', disabled: true, on: {click: stop}}, icon('stop'), 'Stop, keep what is finished'))),
    el('div', {id: 'comparison', data: {state: 'NONE'}}, el('p', {id: 'comparison-sentence'}),
      el('progress', {'id': 'comparison-bar', 'max': '1', 'aria-label': 'Plans that are made', 'hidden': true})));
}

/**
 * @param {any} next a WhatIfView
 * @param {boolean} first true to fill the form with how they were compared last
 */
export function drawCompare(next, first) {
  look = next;
  if (first) {
    const {settings} = next;
    const timed = settings.seconds !== null;
    byId('effort-by-seconds').checked = timed;
    byId('effort-by-steps').checked = !timed;
    byId(timed ? 'effort-seconds' : 'effort-steps').value = String(timed ? settings.seconds : settings.steps);
    byId('seeds').value = String(settings.seeds);
    byId('demand').value = settings.demand.join(', ');
    byId('again').checked = settings.again;
    byId('one-more').checked = settings.oneMore;
  }
  estimate();
}

/** @param {any} progress a ComparisonView */
export function drawProgress(progress) {
  const running = progress.state === 'RUNNING';
  const before = state;
  state = progress.state;
  const start = byId('compare-start');
  const stop = byId('compare-stop');
  const had = document.activeElement;
  start.disabled = running || !look?.scenarios;
  stop.disabled = !running;
  byId('compare-word').textContent = state === 'STOPPED' || state === 'FAILED' ? 'Go on' : 'Compare';
  const box = byId('comparison');
  box.dataset.state = state;
  byId('comparison-sentence').textContent = state === 'NONE' ? '' : progress.sentence;
  const bar = byId('comparison-bar');
  bar.hidden = progress.all === 0 || state === 'DONE';
  bar.value = progress.done / Math.max(1, progress.all);
  for (const field of byId('compare-form').querySelectorAll('input')) {
    field.disabled = running;
  }
  if (running && before !== 'RUNNING') {
    byId('estimate').textContent = '';
    say('The comparison runs. No search for the day can be started until it ends.');
    if (had === start) {
      stop.focus();
    }
  } else if (!running && before === 'RUNNING' && (had === stop || had === document.body)) {
    start.focus();
  }
  if (!running) {
    estimate();
  }
}

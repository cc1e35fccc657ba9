/** What if: which scenarios, how they are compared, and what comes of it. For the manager. */

import {read, Refusal} from '../base/api.js';
import {byId, el, fill} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {view} from '../views/views.js';
import {comparePanel, drawCompare, drawProgress} from './compare.js';
import {problemTable} from './problems.js';
import {drawReport, loadReport} from './report.js';
import {drawScenarios, scenarioPanel} from './scenarios.js';

/** @type {any} the WhatIfView; null before the first answer */
let look = null;
/** @type {any} the ComparisonView that was heard last */
let progress = null;
/** The newest change that the server told of by itself; it may come before the answer that has it. */
let heard = 0;
let asking = false;
let again = false;

const running = () => progress?.state === 'RUNNING';
const scenarios = () => look?.scenarios?.number ?? 0;

/** Takes an answer in place of what is shown. */
function take(next) {
  const first = look?.days !== 'READY'; // Settings that were kept come with the days.
  look = next;
  const box = byId('whatif-days');
  box.dataset.state = next.days;
  fill(byId('whatif-about'), next.days === 'NONE' ? none() : el('p', {class: next.days === 'REFUSED' ? 'note-broken' : '', text: next.sentence}),
    next.problems.length > 0 && problemTable('day-problems', 'Everything that is wrong with the past days', next.problems),
    next.note && el('p', {class: 'note-late', text: next.note}));
  byId('whatif-panels').hidden = next.days !== 'READY';
  if (next.days === 'READY') {
    drawScenarios(next, next.comparison.state === 'RUNNING');
    drawCompare(next, first);
  }
  follow(next.comparison);
}

function none() {
  return [
    el('p', {text: 'Scenarios are compared on past days, and this board was started without any.'}),
    el('p', {}, 'Start it with a folder of them: ', el('code', {text: 'rigmorrow board --past-days FOLDER'}), '. In it is a folder for each day, named by its date, with that day\'s shot list and floor.'),
    el('p', {}, 'Or look at invented ones: ', el('code', {text: 'rigmorrow board --demo'}), '.'),
  ];
}

/** Follows a comparison, also one that another tab has begun. */
function follow(next) {
  const before = progress;
  progress = next;
  const now = next.state === 'RUNNING';
  byId('comparing').textContent = now ? `Scenarios are being compared: ${next.done} of ${next.all} plans.` : '';
  if (look === null) {
    return;
  }
  drawProgress(next);
  if (before?.state === 'RUNNING' && !now) {
    say(next.sentence);
    notice(next.sentence, {bad: next.state === 'FAILED'});
  }
  if (before === null || before.state !== next.state) {
    if (look.days === 'READY') {
      drawScenarios(look, now);
    }
    report();
  }
  drawReport(next, scenarios());
}

let reported = false;

/** Loads the report where nothing is being added to it, and once for who comes in the middle. */
function report() {
  if ((!running() || !reported) && view() === 'whatif') {
    reported = true;
    loadReport(progress, scenarios()).then(() => drawReport(progress, scenarios())).catch(failure => tell('failure', failure));
  }
}

/** Asks the server; one request at a time, and once more when something happened meanwhile. */
async function ask() {
  if (asking) {
    again = true;
    return;
  }
  asking = true;
  try {
    do {
      again = false;
      take(await read('/api/whatif'));
    } while (again || heard > look.change);
    report();
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    tell('failure', failure);
  } finally {
    asking = false;
  }
}

/** Draws the view's frame; asks when it is looked at. */
export function startWhatIf() {
  fill(byId('view-whatif'),
    el('h2', {id: 'whatif-head', text: 'What if'}),
    el('p', {class: 'hint', text: 'What would another rig, operator or shift have bought? Every past day is planned with the floor as it was and with each scenario, with the same effort and the same seeds.'}),
    el('div', {'id': 'whatif-days', 'data': {state: ''}}, el('div', {id: 'whatif-about'}, el('p', {text: 'Asking …'}))),
    el('div', {id: 'whatif-panels', class: 'columns', hidden: true}, scenarioPanel(take, ask), comparePanel(take, ask, follow)),
    el('section', {'id': 'report', 'aria-labelledby': 'report-head', 'hidden': true}));
  hear('view', name => name === 'whatif' && ask());
  hear('comparison', next => {
    heard = next.change;
    if (look !== null && next.change !== look.change) {
      ask();
    }
    follow(next);
  });
  hear('line', up => {
    heard = 0; // A server that was started anew counts from the beginning.
    if (up && view() === 'whatif') {
      ask();
    }
  });
}

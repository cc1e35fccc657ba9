/** What a touch would cost, with the buttons that keep or drop it. */

import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {counted, lateness, length, number} from '../base/words.js';
import {desk, locked} from '../plan/desk.js';
import {answered, drop, keep, proposal} from '../plan/proposal.js';
import {tab} from '../views/tabs.js';
import {view} from '../views/views.js';
import {standing} from './standing.js';

const PINNABLE = new Set(['MOVE', 'TAKE_IN', 'SWAP']);

function row(name, before, after, text, lessIsBetter = true) {
  const differs = before !== after;
  const sign = !differs ? '' : (after < before) === lessIsBetter ? 'better' : 'worse';
  return el('tr', {class: sign},
    el('th', {scope: 'row', text: name}),
    el('td', {class: 'figure', text: text(before)}),
    el('td', {class: 'figure'}, differs && icon(sign), differs && ' ', text(after),
      differs && el('span', {class: 'unseen', text: `, ${sign}`})));
}

function figures(before, after) {
  const {clock} = desk;
  const hard = before.hard > 0 || after.hard > 0;
  return el('table', {id: 'before-after'},
    el('caption', {class: 'unseen', text: 'The plan now and with this touch'}),
    el('thead', {}, el('tr', {}, el('td'), el('th', {scope: 'col', class: 'figure', text: 'Now'}), el('th', {scope: 'col', class: 'figure', text: 'Then'}))),
    el('tbody', {},
      hard && row('Hard rules broken by', before.hard, after.hard, number),
      row('Left out', before.leftOut, after.leftOut, value => counted(value, 'job')),
      row('Late', before.lateJobs, after.lateJobs, value => counted(value, 'job')),
      row('Late in all', before.lateSeconds, after.lateSeconds, value => value ? lateness(value) : '0 min'),
      row('Changeovers', before.changeoverSeconds, after.changeoverSeconds, length),
      row('Finished', before.finishedAt, after.finishedAt, value => clock.at(value)),
      row('Points', before.softPoints, after.softPoints, number)));
}

/** At most so many lines of a list are open; the rest is a click away. */
const OPEN_LINES = 6;

function lines(id, texts, cls) {
  const items = texts.map(text => el('li', {text}));
  return [
    el('ul', {id, class: `bullets ${cls}`}, items.slice(0, OPEN_LINES)),
    items.length > OPEN_LINES && el('details', {}, el('summary', {text: `${items.length - OPEN_LINES} more`}),
      el('ul', {class: `bullets ${cls}`}, items.slice(OPEN_LINES))),
  ];
}

function answer(open) {
  const {tried} = open;
  if (open.failure) {
    return [el('p', {class: 'note-broken', text: open.failure})];
  }
  if (!tried) {
    return [el('p', {class: 'soft', text: 'Working out what it costs …'})];
  }
  if (!tried.allowed) {
    return [el('div', {class: 'note-broken'}, el('p', {}, icon('warn'), ' This cannot be done.'), lines('refusals', tried.refusals, ''))];
  }
  const gone = tried.leftOut.filter(id => desk.jobs.get(id)?.placing);
  const moved = tried.placings.filter(placing => placing.job !== open.touch.job).length;
  return [
    standing(tried),
    tried.breaches.length > 0 && el('div', {class: 'note-broken'},
      el('p', {text: `It would break ${counted(tried.breaches.length, 'hard rule')}:`}), lines('broken', tried.breaches.map(breach => breach.sentence), '')),
    tried.costs.length > 0 && lines('costs', tried.costs, ''),
    gone.length > 0 && el('p', {text: `Left out then: ${gone.join(', ')}.`}),
    moved > 0 && el('p', {class: 'hint', text: `${counted(moved, 'other job')} would get other times.`}),
    figures(tried.before, tried.after),
  ];
}

let last = {job: '', from: ''};

/** Whoever had the focus in here gets it back where the touch began. */
function goBack() {
  if (last.from !== 'form' && view() === 'plan' && desk.jobs.get(last.job)?.placing) {
    tell('select', {id: last.job, focus: true});
  } else if (!byId('side').hidden) {
    byId(`panel-${tab()}`).focus();
  }
}

function show() {
  const panel = byId('proposal');
  const open = proposal();
  if (!open) {
    const held = panel.contains(document.activeElement);
    panel.hidden = true;
    panel.replaceChildren();
    if (held) {
      goBack();
    }
    return;
  }
  last = {job: open.touch.job, from: open.from};
  const had = panel.contains(document.activeElement) ? document.activeElement?.id : '';
  const ready = answered() && open.tried?.allowed === true && !open.keeping && !locked() && !open.failure;
  panel.dataset.standing = open.tried?.allowed ? open.tried.standing : '';
  panel.dataset.allowed = open.tried ? String(open.tried.allowed) : '';
  panel.dataset.answered = String(answered());
  panel.setAttribute('aria-busy', String(!answered() && !open.failure));
  fill(panel,
    el('h2', {id: 'proposal-head', text: 'Proposed, not kept yet'}),
    el('p', {class: 'sentence', text: open.tried?.sentence ?? title(open.touch)}),
    el('div', {class: 'actions'},
      el('button', {id: 'keep', type: 'button', class: 'main', disabled: !ready, on: {click: () => keep(false)}}, icon('yes'), open.keeping ? 'Keeping …' : 'Keep'),
      PINNABLE.has(open.touch.kind) && el('button', {id: 'keep-pin', type: 'button', disabled: !ready, on: {click: () => keep(true)}}, icon('pin'), 'Keep and pin'),
      el('button', {id: 'dont', type: 'button', on: {click: drop}}, icon('close'), 'Don\'t')),
    answer(open));
  panel.hidden = false;
  if (had) {
    const again = document.getElementById(had);
    (again && !(/** @type {any} */ (again).disabled) ? again : panel).focus();
  }
}

function title(touch) {
  const name = `${touch.job} ${desk.jobs.get(touch.job)?.name ?? ''}`;
  return touch.kind === 'MOVE' ? `${name} to ${touch.rig}, place ${touch.place + 1}` : name;
}

/** Says the outcome to those who listen, once for every answer. */
function speak(open) {
  if (!open || !answered() && !open.failure) {
    return;
  }
  const {tried} = open;
  if (open.failure) {
    say(open.failure);
  } else if (!tried.allowed) {
    say(`Cannot be done. ${tried.refusals.join(' ')}`);
  } else {
    const word = {BETTER: 'Better', WORSE: 'Worse', EQUAL: 'Costs the same'}[tried.standing];
    const broken = tried.breaches.length ? ` Breaks ${counted(tried.breaches.length, 'hard rule')}: ${tried.breaches[0].sentence}` : '';
    say(`${tried.sentence}. ${word}. ${tried.costs.slice(0, 3).join(' ')}${broken}`);
  }
}

let spokenOf = null;

/** Follows the proposal. */
export function startProposalPanel() {
  hear('proposal', open => {
    show();
    const now = open?.failure || (answered() ? open?.tried : null);
    if (now && now !== spokenOf) {
      spokenOf = now;
      speak(open);
      if (open.from === 'form') {
        byId('proposal').focus();
      }
    }
  });
  hear('kept', ({words}) => {
    say(`Kept: ${words}.`);
    notice(`Kept: ${words}. Undo takes it back.`);
  });
  hear('board', () => proposal() && show());
}

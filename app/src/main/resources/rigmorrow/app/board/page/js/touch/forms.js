/** The forms of the job panel. Each one only proposes; what it costs is shown before it is kept. */

import {el, icon} from '../base/dom.js';
import {pinWords} from '../chart/bar.js';
import {desk, locked} from '../plan/desk.js';
import {propose} from '../plan/proposal.js';
import {section} from '../ask/job-panel.js';

function form(id, submit, ...content) {
  return el('form', {id, on: {submit: event => {
    event.preventDefault();
    submit(new FormData(event.target));
  }}}, ...content);
}

function field(id, label, input) {
  input.id = id;
  return el('div', {class: 'field'}, el('label', {for: id, text: label}), input);
}

const tryButton = (id, text) => el('button', {id, type: 'submit', disabled: locked(), text});
const button = (id, picture, text, run) =>
  el('button', {id, type: 'button', disabled: locked(), on: {click: run}}, icon(picture), text);

function moveForm(job) {
  const rigs = desk.board.rigs;
  const now = job.placing;
  const most = rig => (desk.rigs.get(rig)?.jobs ?? []).filter(id => id !== job.id).length + 1;
  const select = el('select', {name: 'rig'}, rigs.map(rig => el('option', {
    value: rig.id, text: `${rig.id} ${rig.name === rig.id ? '' : rig.name}${job.fits.includes(rig.id) ? '' : ' (does not fit)'}`,
    prop: {selected: rig.id === (now?.rig ?? job.fits[0])},
  })));
  const place = el('input', {name: 'place', type: 'number', min: '1', max: String(most(select.value)), required: true, value: String(now ? now.place + 1 : most(select.value))});
  const hint = el('span', {class: 'hint', id: 'move-most', text: `1 to ${most(select.value)}`});
  place.setAttribute('aria-describedby', 'move-most');
  select.addEventListener('change', () => {
    place.max = String(most(select.value));
    hint.textContent = `1 to ${place.max}`;
    if (Number(place.value) > Number(place.max)) {
      place.value = place.max;
    }
  });
  return form('move', data => propose({kind: 'MOVE', job: job.id, rig: data.get('rig'), place: Number(data.get('place')) - 1}, 'form'),
    field('move-rig', 'Rig', select), field('move-place', 'Place', place), hint, tryButton('move-try', 'See what it costs'));
}

function swapForm(job) {
  const list = el('datalist', {id: 'swap-list'}, desk.board.jobs.filter(other => other.placing && other.id !== job.id)
    .map(other => el('option', {value: other.id, text: `${other.name}, ${other.placing.rig} ${desk.clock.at(other.placing.start)}`})));
  const input = el('input', {name: 'other', list: 'swap-list', required: true, autocomplete: 'off', placeholder: 'Job id'});
  input.addEventListener('input', () => input.setCustomValidity(
    desk.jobs.has(input.value.trim()) || input.value === '' ? '' : 'No job has this id.'));
  return form('swap', data => propose({kind: 'SWAP', job: job.id, other: String(data.get('other')).trim()}, 'form'),
    field('swap-with', 'Swap with', input), list, tryButton('swap-try', 'See what it costs'));
}

function pinForms(job) {
  const hold = (place, startsAt) => propose({kind: 'HOLD', job: job.id, place, startsAt}, 'form');
  const {placing, pin} = job;
  return [
    pin && el('p', {}, el('span', {class: 'chip pinned'}, icon('pin'), pinWords(pin))),
    el('div', {class: 'buttons'},
      button('pin-rig', 'pin', `Pin to ${placing.rig}`, () => hold(false, null)),
      button('pin-place', 'pin', `Pin to ${placing.rig}, place ${placing.place + 1}`, () => hold(true, null)),
      pin && button('unpin', 'close', 'Take the pin off', () => propose({kind: 'RELEASE', job: job.id}, 'form'))),
    form('hold', data => hold(false, data.get('at')),
      field('pin-at', 'First step starts at (floor time)', el('input', {
        name: 'at', type: 'datetime-local', required: true, value: pin?.startsAt?.slice(0, 16) ?? desk.clock.field(placing.start),
      })),
      tryButton('pin-time', 'Pin to this time')),
  ];
}

function promiseForm(job) {
  const at = el('input', {name: 'at', type: 'datetime-local', value: job.promise?.dueAt.slice(0, 16) ?? '', required: true});
  return [
    form('promise', data => propose({kind: 'SET_PROMISE', job: job.id, dueAt: data.get('at'), must: data.get('must') === 'on'}, 'form'),
      field('promise-at', 'Pictures taken by (floor time)', at),
      el('label', {}, el('input', {id: 'promise-must', name: 'must', type: 'checkbox', prop: {checked: job.promise?.must ?? false}}), 'Must: being late breaks the plan'),
      el('div', {class: 'buttons'}, tryButton('promise-try', 'See what it costs'),
        job.promise && button('promise-none', 'close', 'No promise', () => propose({kind: 'SET_PROMISE', job: job.id, dueAt: null, must: false}, 'form')))),
    form('weight', data => propose({kind: 'SET_WEIGHT', job: job.id, weight: Number(data.get('weight'))}, 'form'),
      field('weight-is', 'Weight', el('input', {name: 'weight', type: 'number', min: '1', max: '1000', required: true, value: String(job.weight)})),
      tryButton('weight-try', 'See what it costs')),
  ];
}

/**
 * All that can be done with a job.
 *
 * @param {any} job a JobView
 */
export function forms(job) {
  return [
    section('move', job.placing ? 'Move' : 'Plan it',
      !job.placing && el('div', {class: 'buttons'}, button('take-in', 'yes', 'Take in where it costs least', () => propose({kind: 'TAKE_IN', job: job.id}, 'form'))),
      moveForm(job),
      job.placing && swapForm(job),
      job.placing && el('div', {class: 'buttons'}, button('leave-out', 'out', 'Leave out', () => propose({kind: 'LEAVE_OUT', job: job.id}, 'form')))),
    job.placing && section('pin', 'Pin', pinForms(job)),
    section('promise', 'Promise and weight', promiseForm(job)),
  ];
}

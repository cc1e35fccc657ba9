/** The usual changes, without a file: what is otherwise, and what has to be bought for it. */

import {amount} from '../base/amount.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {offerAgain, offerFrom, offerPrice} from './prices.js';

/** Each kind with its name and the fields that it has. */
const KINDS = {
  ANOTHER_RIG: ['Another rig like …', ['rig', 'price']],
  WITHOUT_RIG: ['A rig less', ['rig']],
  ANOTHER_OPERATOR: ['Another operator like …', ['operator']],
  ANOTHER_UNIT: ['Another piece of kit', ['kit', 'price']],
  OTHER_DEMAND: ['More or fewer jobs', ['percent']],
  OPEN_LONGER: ['Longer hours for all', ['hours']],
};

let drawn = '';

const value = id => byId(`change-${id}`).value;
const figure = id => Number(value(id));

function body() {
  const kind = value('kind');
  switch (kind) {
    case 'ANOTHER_RIG': return {change: {kind, rig: value('rig')}, purchase: purchase()};
    case 'WITHOUT_RIG': return {change: {kind, rig: value('rig')}};
    case 'ANOTHER_OPERATOR': return {change: {kind, operator: value('operator')}};
    case 'ANOTHER_UNIT': return {change: {kind, kit: value('kit')}, purchase: purchase()};
    case 'OTHER_DEMAND': return {change: {kind, percent: figure('percent')}};
    default: return {change: {kind, earlierMinutes: figure('earlier'), laterMinutes: figure('later'), regularTime: byId('change-regular').checked}};
  }
}

const MOST = 1_000_000_000;
/** The fields for money, with the least that each takes. */
const AMOUNTS = {price: 0, running: -MOST};

const money = id => amount(value(id), AMOUNTS[id], MOST);

/** Nothing is bought where no price is given. */
function purchase() {
  return value('price').trim() === '' ? null : {price: money('price').value, lifeYears: figure('life'), interestPercent: figure('interest'), runningPerYear: money('running').value};
}

/** Says beside a field why its amount is not taken; true when it is. */
function sure(id) {
  const input = byId(`change-${id}`);
  const nothing = id === 'price' && input.value.trim() === '';
  const problem = input.disabled || nothing ? '' : money(id).problem;
  const line = byId(`change-${id}-problem`);
  line.hidden = problem === '';
  fill(line, problem !== '' && [icon('warn'), ` ${problem}`]);
  input.setAttribute('aria-invalid', String(problem !== ''));
  return problem === '';
}

/**
 * While a sentence is there, it follows what is typed. None comes or goes when the field is left: the button would move away from under
 * the click that leaves it.
 */
function again(id) {
  if (!byId(`change-${id}-problem`).hidden) {
    sure(id);
  }
}

/** Says it of every amount, and goes to the first that is not taken. */
function allSure() {
  const unsure = Object.keys(AMOUNTS).filter(id => !sure(id));
  if (unsure.length > 0) {
    byId(`change-${unsure[0]}`).focus();
  }
  return unsure.length === 0;
}

function show() {
  const fields = KINDS[value('kind')][1];
  for (const part of byId('change-form').querySelectorAll('[data-part]')) {
    const on = fields.includes(part.dataset.part);
    part.hidden = !on;
    for (const input of part.querySelectorAll('input, select')) {
      input.disabled = !on; // A hidden field must not keep the form from being sent.
    }
  }
  offer();
}

/** Another thing has another price; what was wrong with the one before goes with it. */
function offer() {
  offerPrice();
  Object.keys(AMOUNTS).forEach(sure);
}

/**
 * The form, to be drawn once.
 *
 * @param {(body: object) => Promise<boolean>} add true when it was taken
 */
export function changeForm(add) {
  const field = (id, label, input) => el('div', {class: 'field'}, el('label', {for: `change-${id}`, text: label}), input);
  const choice = (id, label) => el('div', {data: {part: id}}, field(id, label, el('select', {id: `change-${id}`, required: true, on: {change: offer}})));
  const number = (id, label, more) => field(id, label, el('input', {id: `change-${id}`, type: 'number', ...more}));
  const sum = (id, label, more) => el('div', {class: 'field'}, el('label', {for: `change-${id}`, text: label}),
    el('input', {'id': `change-${id}`, 'type': 'text', 'inputmode': 'decimal', 'autocomplete': 'off', 'maxlength': '40', 'aria-describedby': `change-${id}-problem`, 'on': {input: () => again(id)}, ...more}),
    el('p', {id: `change-${id}-problem`, class: 'note-broken', role: 'alert', hidden: true}));
  const form = el('form', {id: 'change-form', on: {submit: async event => {
    event.preventDefault();
    if (allSure() && await add(body())) {
      offerAgain();
      allSure();
    }
  }}},
  el('fieldset', {}, el('legend', {text: 'Make one here'}),
    field('kind', 'What is otherwise', el('select', {id: 'change-kind', on: {change: show}},
      Object.entries(KINDS).map(([kind, [text]]) => el('option', {value: kind, text})))),
    choice('rig', 'Rig'), choice('operator', 'Operator'), choice('kit', 'Kit'),
    el('div', {data: {part: 'percent'}}, number('percent', 'Per cent more; below 0 for fewer', {value: '20', min: '-95', max: '500', step: 'any', required: true})),
    el('div', {class: 'parts', data: {part: 'hours'}},
      number('earlier', 'Minutes earlier', {value: '0', min: '0', max: '1439', required: true}),
      number('later', 'Minutes later', {value: '60', min: '0', max: '1439', required: true}),
      el('label', {class: 'tick'}, el('input', {id: 'change-regular', type: 'checkbox'}), 'paid as regular time')),
    el('div', {class: 'parts', data: {part: 'price'}},
      sum('price', 'Price; empty if nothing is bought', {placeholder: 'none'}),
      number('life', 'Years of use', {value: '8', min: '1', max: '100', required: true}),
      sum('running', 'To keep, a year', {value: '0', required: true}),
      number('interest', 'Interest, % a year', {value: '5', min: '0', max: '100', step: 'any', required: true})),
    el('p', {id: 'change-listed', class: 'hint', hidden: true, text: 'The scenario file has a price for this one. What you write instead counts for this scenario only.'}),
    el('button', {id: 'change-add', type: 'submit', text: 'Add this scenario'})));
  queueMicrotask(show);
  return form;
}

/**
 * @param {any} floor a FloorNamesView: what can be chosen
 * @param {any} scenarios a ScenariosView: what things cost; null while there are none
 */
export function fillChoices(floor, scenarios) {
  const next = JSON.stringify(floor);
  if (next !== drawn) {
    drawn = next;
    fillNames(floor);
  }
  offerFrom(scenarios);
}

function fillNames(floor) {
  for (const [id, list] of [['rig', floor.rigs], ['operator', floor.operators], ['kit', floor.kits]]) {
    fill(byId(`change-${id}`), list.map(one => el('option', {value: one.id, text: one.title})));
  }
  byId('change-price').closest('.field').querySelector('label').textContent = `Price in ${floor.currency}; empty if nothing is bought`;
}

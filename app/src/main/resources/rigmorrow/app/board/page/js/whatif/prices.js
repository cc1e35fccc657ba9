/** What the list of prices in the scenarios offers for a purchase. The list itself is never changed here. */

import {typed} from '../base/amount.js';
import {byId} from '../base/dom.js';

const FIELDS = ['price', 'life', 'running', 'interest'];
const USUAL = {price: '', life: '8', running: '0', interest: '5'};

/** @type {any} the ScenariosView that is shown; null while there are none */
let scenarios = null;
/** What the fields were filled with last. */
let filled = USUAL;

const field = id => byId(`change-${id}`);
const untouched = () => FIELDS.every(id => field(id).value === filled[id]);

/** What the list says of the thing that is chosen; undefined where it says nothing. */
function listed() {
  switch (field('kind').value) {
    case 'ANOTHER_RIG': return scenarios?.rigPrices.find(one => one.id === field('rig').value);
    case 'ANOTHER_UNIT': return scenarios?.kitPrices.find(one => one.id === field('kit').value);
    default: return undefined;
  }
}

function fillIn(price) {
  filled = price === undefined ? {...USUAL, interest: String(scenarios?.interestPercent ?? USUAL.interest)}
    : {price: typed(price.price), life: String(price.lifeYears), running: typed(price.runningPerYear), interest: String(price.interestPercent)};
  for (const id of FIELDS) {
    field(id).value = filled[id];
  }
}

/** Another thing was chosen: its price, or none where the price was that of another thing. */
export function offerPrice() {
  const price = listed();
  byId('change-listed').hidden = price === undefined;
  if (price !== undefined || untouched()) {
    fillIn(price);
  }
}

/** A scenario was added: what somebody typed was for that one. */
export function offerAgain() {
  fillIn(listed());
}

/**
 * Other scenarios have another list; what somebody is typing stays.
 *
 * @param {any} next the ScenariosView; null for none
 */
export function offerFrom(next) {
  const other = next?.number !== scenarios?.number;
  scenarios = next;
  byId('change-listed').hidden = listed() === undefined;
  if (other && untouched()) {
    fillIn(listed());
  }
}

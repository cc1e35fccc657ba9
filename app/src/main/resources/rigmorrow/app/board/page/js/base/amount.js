/** Amounts as people type them. The same rules as for a number in a dropped table, which a test holds them against. */

import {number} from './words.js';

const ONE_GROUP = /^[1-9]\d{0,2}[.,]\d{3}$/;
const ONE_SIGN = /^\d*[.,]\d+$/;
const GROUPS = /^[1-9]\d{0,2}(?:([.,' ’\u00a0\u202f])\d{3})(?:\1\d{3})*(?:([.,])\d+)?$/;

/** Two decimals; where there are three that count, one more, for three could be thousands. */
function decimals(text) {
  const plain = text.replace(',', '.');
  return plain.endsWith('0') ? plain.slice(0, -1) : `${plain}0`;
}

/** The digits with a point for the decimal mark; empty where it is no number. */
function plain(text) {
  if (/^\d+$/.test(text)) {
    return text;
  }
  if (ONE_SIGN.test(text)) {
    return text.replace(',', '.');
  }
  const [, grouping, mark] = GROUPS.exec(text) ?? [];
  if (grouping === undefined || mark === grouping) {
    return '';
  }
  return text.replaceAll(grouping, '').replace(',', '.');
}

/**
 * What an amount means, or a sentence that says why it is not taken.
 *
 * @param {string} written as it was typed, not empty
 * @param {number} least that is taken
 * @param {number} most that is taken
 * @returns {{value: number, problem: string}} an empty problem where the value is sure
 */
export function amount(written, least, most) {
  const text = written.trim();
  const sign = /^[-−]/.test(text) ? '-' : '';
  const size = text.replace(/^[-−+]\s*/, '');
  if (ONE_GROUP.test(size)) {
    const thousands = sign + size.replace(/[.,]/, '');
    return {value: NaN, problem: `${text} could be ${number(Number(thousands))} or ${Number(sign + size.replace(',', '.'))}. Write ${thousands} or ${sign}${decimals(size)}.`};
  }
  const digits = plain(size);
  if (digits === '') {
    return {value: NaN, problem: text === '' ? 'An amount is needed here; write 0 for none.' : `${text} is no amount. Write digits only, such as 60000 or 60.50.`};
  }
  const value = Number(sign + digits);
  return value < least || value > most ? {value: NaN, problem: `${text} is too ${value < least ? 'little' : 'much'}: from ${number(least)} to ${number(most)} is taken.`}
    : {value, problem: ''};
}

/**
 * A figure as somebody would type it, so that it is read as the same.
 *
 * @param {number} value
 */
export function typed(value) {
  const text = String(value);
  return ONE_GROUP.test(text.replace('-', '')) ? `${text}0` : text;
}

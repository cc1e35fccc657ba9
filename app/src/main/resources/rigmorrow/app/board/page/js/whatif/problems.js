/** What is wrong, beside what it is about. */

import {Refusal} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';

/**
 * @param {string} id
 * @param {string} title
 * @param {any[]} problems PlacedProblemViews
 */
export function problemTable(id, title, problems) {
  return el('div', {'class': 'scroller short', 'tabindex': '0', 'role': 'region', 'aria-label': title}, el('table', {id},
    el('caption', {text: `${title}.`}),
    el('thead', {}, el('tr', {}, ['Where', 'Value', 'What would be accepted'].map(text => el('th', {scope: 'col', text})))),
    el('tbody', {}, problems.map(problem => el('tr', {},
      el('th', {scope: 'row', text: place(problem)}), el('td', {text: problem.value || 'nothing there'}), el('td', {text: problem.accepted}))))));
}

/** Place and field, without saying the field twice. */
function place(problem) {
  return problem.field && !problem.where.endsWith(problem.field) ? `${problem.where}, ${problem.field}` : problem.where;
}

/** Shown where there is a reason in place of what was asked for. */
export function failureLine(id) {
  return el('p', {id, class: 'note-broken', role: 'alert', hidden: true});
}

/**
 * Does something that the server may refuse, and says why beside it.
 *
 * @param {string} id of the failure's line
 * @param {() => Promise<any>} work
 * @returns {Promise<any>} null when it was refused
 */
export async function orSay(id, work) {
  byId(id).hidden = true;
  try {
    return await work();
  } catch (failure) {
    if (!(failure instanceof Refusal)) {
      throw failure;
    }
    fill(byId(id), icon('warn'), ' ', failure.message);
    byId(id).hidden = false;
    return null;
  }
}

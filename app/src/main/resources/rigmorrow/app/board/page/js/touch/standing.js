/** Better, equal or worse, by arrow and word. */

import {el, icon} from '../base/dom.js';

const WORDS = {
  BETTER: ['better', 'better', 'Better than now'],
  EQUAL: ['equal', 'equal', 'Costs the same'],
  WORSE: ['worse', 'worse', 'Worse than now'],
};

/** @param {any} tried a TriedView that is allowed */
export function standing(tried) {
  const [cls, picture, text] = WORDS[tried.standing] ?? WORDS.EQUAL;
  const broken = tried.breaches.length;
  return el('p', {class: 'standing'},
    el('span', {class: `chip ${cls}`}, icon(picture), text),
    broken > 0 && el('span', {class: 'chip broken'}, icon('warn'), broken === 1 ? 'breaks a rule' : `breaks ${broken} rules`));
}

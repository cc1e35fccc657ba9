/** What is said when the board was changed elsewhere, when something fails, when the line is cut. */

import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {cry, notice, quiet} from '../base/live.js';

/** Follows what changes and failures tell. */
export function startStale() {
  const dialog = byId('stale');
  hear('stale', ({message, since}) => {
    fill(dialog, el('h2', {id: 'stale-head'}, icon('warn'), ' Not kept: the board was changed meanwhile'),
      el('p', {text: message}),
      since.length > 0 && [el('p', {text: 'Since then:'}), el('ul', {id: 'stale-since', class: 'bullets'}, since.map(text => el('li', {text})))],
      el('p', {text: 'You see the board as it is now. Nothing of yours was kept; look again and decide anew.'}),
      el('form', {method: 'dialog', class: 'actions'}, el('button', {id: 'stale-ok', class: 'main', text: 'I have seen it'})));
    if (!dialog.open) {
      dialog.showModal();
    }
  });
  hear('moved-on', () => notice('The board was changed in another window. What you propose is about the board as it was.', {
    stays: true, action: {name: 'Drop it and show the board', run: () => {
      tell('drop', null);
      tell('reload', null);
    }},
  }));
  hear('failure', failure => {
    notice(failure.message, {bad: true});
    cry(failure.message);
  });
  let cut = false;
  hear('line', up => {
    if (!up && !cut) {
      cut = true;
      notice('The board\'s server does not answer. This page tries again by itself.', {bad: true});
      cry('The board\'s server does not answer.');
    } else if (up && cut) {
      cut = false;
      quiet();
    }
  });
}

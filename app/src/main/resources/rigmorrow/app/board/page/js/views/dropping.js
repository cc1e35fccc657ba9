/** Files that are dropped anywhere on the page go to the view that is shown, or else to the usual one. */

import {byId} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {view} from './views.js';

/** @type {Map<string, {words: string, take: (file: File) => void}>} by view; '' for any other */
const takers = new Map();

const taker = () => takers.get(view()) ?? takers.get('');

/**
 * @param {string} name of a view; '' for every view that takes none itself
 * @param {string} words shown while a file is over the page
 * @param {(file: File) => void} take
 */
export function dropOn(name, words, take) {
  takers.set(name, {words, take});
}

/** Listens for files; one at a time is taken. */
export function startDropping() {
  const veil = byId('drop-veil');
  const files = event => event.dataTransfer?.types.includes('Files');
  hear('view', () => {
    veil.firstElementChild.textContent = taker()?.words ?? '';
  });
  addEventListener('dragover', event => {
    if (files(event)) {
      event.preventDefault();
      veil.hidden = false;
    }
  });
  addEventListener('dragleave', event => {
    if (event.relatedTarget === null) {
      veil.hidden = true;
    }
  });
  addEventListener('drop', event => {
    veil.hidden = true;
    if (files(event)) {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) {
        taker()?.take(file);
      }
    }
  });
}

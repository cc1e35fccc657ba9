/** The tabs of the side: arrows go along them, one is shown. */

import {byId} from '../base/dom.js';
import {tell} from '../base/bus.js';

const NAMES = ['job', 'out', 'troubles', 'pins', 'search'];

/**
 * Shows a tab's panel.
 *
 * @param {string} name
 */
export function openTab(name) {
  for (const other of NAMES) {
    const tab = byId(`tab-${other}`);
    const on = other === name;
    tab.setAttribute('aria-selected', String(on));
    tab.tabIndex = on ? 0 : -1;
    byId(`panel-${other}`).hidden = !on;
  }
  tell('tab', name);
}

/** @returns {string} the tab that is open */
export function tab() {
  return NAMES.find(name => byId(`tab-${name}`).getAttribute('aria-selected') === 'true') ?? 'job';
}

/**
 * Writes how many things a tab holds beside its name.
 *
 * @param {string} name
 * @param {string} text
 * @param {number} count
 */
export function countTab(name, text, count) {
  byId(`tab-${name}`).textContent = count > 0 ? `${text} ${count}` : text;
}

/** Wires the tabs. */
export function startTabs() {
  for (const name of NAMES) {
    byId(`tab-${name}`).addEventListener('click', () => openTab(name));
  }
  byId('tabs').addEventListener('keydown', event => {
    const at = NAMES.indexOf(tab());
    const to = {ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: NAMES.length - 1}[event.key];
    if (to !== undefined) {
      event.preventDefault();
      const name = NAMES[(to + NAMES.length) % NAMES.length];
      openTab(name);
      byId(`tab-${name}`).focus();
    }
  });
}

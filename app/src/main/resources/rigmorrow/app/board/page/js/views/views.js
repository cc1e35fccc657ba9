/** Which view is shown. The address says it, so that it can be linked to and gone back from. */

import {byId} from '../base/dom.js';
import {tell} from '../base/bus.js';

const NAMES = ['plan', 'jobs', 'fit', 'handout', 'import', 'whatif'];
const WITH_SIDE = new Set(['plan', 'jobs']);

/** @returns {string} the view that is shown */
export function view() {
  const asked = location.hash.slice(1);
  return NAMES.includes(asked) ? asked : 'plan';
}

/** @param {string} name */
export function go(name) {
  if (view() !== name) {
    location.hash = name;
  }
}

function show() {
  const name = view();
  for (const other of NAMES) {
    byId(`view-${other}`).hidden = other !== name;
  }
  for (const link of document.querySelectorAll('#views a')) {
    if (/** @type {HTMLElement} */ (link).dataset.view === name) {
      link.setAttribute('aria-current', 'page');
    } else {
      link.removeAttribute('aria-current');
    }
  }
  const aside = WITH_SIDE.has(name);
  byId('side').hidden = !aside;
  byId('work').classList.toggle('no-side', !aside);
  tell('view', name);
}

/** Shows the view of the address, now and when it changes. */
export function startViews() {
  addEventListener('hashchange', () => {
    if (NAMES.includes(location.hash.slice(1)) || location.hash === '') {
      show();
    }
  });
  show();
}

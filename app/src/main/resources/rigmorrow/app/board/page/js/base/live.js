/** Speaks to those who listen, and shows notices to those who see. */

import {byId, el, fill, icon} from './dom.js';

/** @param {string} text said when the reader has time */
export function say(text) {
  const line = byId('say');
  // The same text twice is only read when the line was empty in between.
  line.textContent = '';
  setTimeout(() => {
    line.textContent = text;
  }, 30);
}

/** @param {string} text said at once */
export function cry(text) {
  const line = byId('cry');
  line.textContent = '';
  setTimeout(() => {
    line.textContent = text;
  }, 30);
}

let fading = 0;

/**
 * Shows a line under the header.
 *
 * @param {string} text
 * @param {{bad?: boolean, action?: {name: string, run: () => void}, stays?: boolean}} [how]
 */
export function notice(text, how = {}) {
  const line = byId('notice');
  clearTimeout(fading);
  line.classList.toggle('bad', how.bad === true);
  fill(line,
    how.bad ? icon('warn') : null,
    el('span', {text}),
    how.action && el('button', {type: 'button', text: how.action.name, on: {click: () => {
      quiet();
      how.action?.run();
    }}}),
    el('button', {'type': 'button', 'class': 'quiet', 'aria-label': 'Close this line', 'on': {click: quiet}}, icon('close')));
  line.hidden = false;
  if (!how.bad && !how.stays) {
    fading = window.setTimeout(quiet, 8000);
  }
}

/** Takes the line away. */
export function quiet() {
  const line = byId('notice');
  line.hidden = true;
  line.replaceChildren();
}

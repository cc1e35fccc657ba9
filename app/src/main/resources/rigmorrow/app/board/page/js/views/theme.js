/** Light, dark, or as the system has it. */

import {byId} from '../base/dom.js';
import {recall, remember} from '../base/keep-in-mind.js';

const NEXT = {system: 'light', light: 'dark', dark: 'system'};
const NAMES = {system: 'as the system', light: 'light', dark: 'dark'};

/** Wires the switch. */
export function startTheme() {
  const button = byId('theme');
  let theme = recall('theme') ?? 'system';
  const show = () => {
    if (theme === 'system') {
      delete document.documentElement.dataset.theme;
    } else {
      document.documentElement.dataset.theme = theme;
    }
    const text = `Theme: ${NAMES[theme]}. Change to ${NAMES[NEXT[theme]]}`;
    byId('theme-text').textContent = text;
    button.title = text;
  };
  button.addEventListener('click', () => {
    theme = NEXT[theme] ?? 'system';
    remember('theme', theme === 'system' ? null : theme);
    show();
  });
  show();
}

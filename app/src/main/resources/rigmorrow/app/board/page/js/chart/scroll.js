/** Scrolling among the chart's rows. */

import {byId} from '../base/dom.js';

/** The part that scrolls when there are more rows than room. @returns {HTMLElement | null} */
const scroller = () => byId('chart').querySelector('.vis-left.vis-vertical-scroll');

/** Where rows are out of sight, the Tab key leads to the part that scrolls them. */
export function reachRows() {
  const part = scroller();
  if (part && part.scrollHeight > part.clientHeight) {
    part.tabIndex = 0;
    part.setAttribute('role', 'group');
    part.setAttribute('aria-label', 'Rows of the chart, arrows scroll');
  } else {
    part?.removeAttribute('tabindex');
  }
}

/** True for a key that scrolls the rows. */
export function scrollsRows(event) {
  return event.target === scroller();
}

/** Pixels by which the rows are scrolled down. */
export function scrolled() {
  return scroller()?.scrollTop ?? 0;
}

/** @param {number} top pixels to scroll the rows down to */
export function scrollTo(top) {
  const bar = scroller();
  if (bar && top > 0) {
    bar.scrollTop = top;
  }
}

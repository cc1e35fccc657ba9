/** Plan again around my pins: start, follow, stop. */

import {read, Refusal, send} from '../base/api.js';
import {byId, el, fill, icon} from '../base/dom.js';
import {hear, tell} from '../base/bus.js';
import {notice, say} from '../base/live.js';
import {counted, number} from '../base/words.js';
import {orStale} from '../plan/changes.js';
import {desk} from '../plan/desk.js';
import {drop} from '../plan/proposal.js';
import {countTab} from '../views/tabs.js';
import {courseChart} from './course.js';

let search = {state: 'NONE', sentence: '', limitSeconds: 0, elapsedMillis: 0, course: []};
let seconds = '10';
let failure = '';

const running = () => search.state === 'RUNNING';

async function start() {
  failure = '';
  drop();
  try {
    take(await send('/api/search', {revision: desk.board.revision, seconds: Number(seconds)}));
  } catch (problem) {
    try {
      await orStale(problem);
    } catch (other) {
      if (!(other instanceof Refusal)) {
        throw other;
      }
      failure = other.message;
      show();
    }
  }
}

async function stop() {
  try {
    take(await send('/api/search/stop', {}));
  } catch (problem) {
    tell('failure', problem);
  }
}

function take(next) {
  const ended = running() && next.state !== 'RUNNING';
  const began = !running() && next.state === 'RUNNING';
  search = next;
  const had = document.activeElement?.id;
  show();
  // A button that is switched off loses the focus: it goes to the one that is on.
  if (began && had === 'search-start') {
    byId('search-stop').focus();
  } else if (ended && had === 'search-stop') {
    byId('search-start').focus();
  }
  if (began) {
    say('The search runs. The plan cannot be touched until it ends.');
  }
  if (ended) {
    say(next.sentence);
    notice(next.sentence, {bad: next.state === 'FAILED'});
  }
}

function table() {
  return el('details', {id: 'search-table-more'}, el('summary', {text: `${counted(search.course.length, 'better plan')} as a table`}),
    el('div', {class: 'scroller short', tabindex: '0', role: 'region', 'aria-label': 'Course of the search'}, el('table', {id: 'search-table'},
      el('caption', {text: 'The best plan over time'}),
      el('thead', {}, el('tr', {}, ['After', 'Hard', 'Left out', 'Points'].map(text => el('th', {scope: 'col', class: 'figure', text})))),
      el('tbody', {}, search.course.map(moment => el('tr', {},
        [`${(moment.millis / 1000).toFixed(1)} s`, number(moment.hard), number(moment.leftOutPoints), number(moment.softPoints)]
          .map(text => el('td', {class: 'figure', text}))))))));
}

/** What is drawn once; what changes is filled in, so that the focus stays on the buttons. */
function frame() {
  const input = el('input', {id: 'search-seconds', type: 'number', min: '1', max: '3600', required: true, value: seconds,
    on: {input: event => {
      seconds = event.target.value;
    }}});
  fill(byId('panel-search'),
    el('h2', {text: 'Plan again around my pins'}),
    el('p', {class: 'hint', text: 'Searches on from the plan there is. Pinned jobs stay where they are pinned, held back jobs stay out. The best plan found is kept, and can be undone.'}),
    el('form', {id: 'search-form', on: {submit: event => {
      event.preventDefault();
      start();
    }}},
    el('div', {class: 'field'}, el('label', {for: 'search-seconds', text: 'Seconds'}), input),
    el('button', {id: 'search-start', type: 'submit', class: 'main'}, icon('go'), 'Search'),
    el('button', {id: 'search-stop', type: 'button', disabled: true, on: {click: stop}}, icon('stop'), 'Stop, keep the best')),
    el('p', {id: 'search-failure', class: 'note-broken', hidden: true}),
    el('div', {id: 'search-state', data: {state: search.state}}, el('p', {id: 'search-sentence'}),
      el('progress', {'id': 'search-bar', 'max': '1', 'aria-label': 'Time of the search', 'hidden': true})),
    el('div', {id: 'search-course'}),
    el('div', {id: 'search-more'}));
}

function show() {
  const now = running();
  byId('search-start').disabled = now;
  byId('search-stop').disabled = !now;
  byId('search-failure').hidden = failure === '';
  byId('search-failure').textContent = failure;
  byId('search-state').dataset.state = search.state;
  byId('search-sentence').textContent = search.sentence;
  const bar = byId('search-bar');
  bar.hidden = !now || search.limitSeconds === 0;
  bar.value = Math.min(1, search.elapsedMillis / 1000 / Math.max(1, search.limitSeconds));
  courseChart(byId('search-course'), search.course, now ? search.elapsedMillis : null);
  const more = byId('search-more');
  const open = more.querySelector('details')?.open ?? false;
  const shown = search.course.length > 0;
  if (!more.contains(document.activeElement)) {
    fill(more, shown && table());
    if (shown && open) {
      more.querySelector('details').open = true;
    }
  }
  byId('busy').textContent = now ? `A search runs: ${Math.round(search.elapsedMillis / 1000)} of ${search.limitSeconds} s. The plan cannot be touched.` : '';
  countTab('search', now ? 'Searching' : 'Plan again', 0);
}

/** Follows the search, also one that another window started. */
export function startSearch() {
  frame();
  hear('search', take);
  hear('tab', name => name === 'search' && show());
  read('/api/search').then(take).catch(problem => tell('failure', problem));
}

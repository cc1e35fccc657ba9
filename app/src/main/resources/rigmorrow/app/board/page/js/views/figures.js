/** The header: floor, date, zone, what the plan comes to, and the rules it breaks. */

import {byId, el, fill, icon} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {counted, lateness, length, number, percent} from '../base/words.js';
import {desk} from '../plan/desk.js';

/** Shows them now and with every new board. */
export function startFigures() {
  hear('board', board => {
    header(board);
    breaches(board.breaches);
    figures(board);
  });
}

function header(board) {
  const {clock} = desk;
  byId('floor').textContent = board.floor;
  const first = new Date(`${board.date}T12:00Z`);
  const text = date => date.toLocaleDateString('en-GB', {weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC'});
  byId('date').textContent = board.days === 1 ? text(first) : `${text(first)} and ${counted(board.days - 1, 'more day')}`;
  byId('zone').textContent = clock.zoneSentence();
  byId('which').textContent = board.stamp;
  byId('advice').textContent = board.advice;
  document.title = `${board.floor}, ${board.date} · Rigmorrow board`;
}

/** So many broken rules are open; a plan that is wholly broken would fill the page. */
const OPEN_BREACHES = 3;

function breaches(list) {
  const banner = byId('breaches');
  const wasOpen = banner.querySelector('details')?.open ?? false;
  const line = breach => el('li', {text: breach.sentence, data: {rule: breach.rule}});
  banner.hidden = list.length === 0;
  fill(banner,
    el('h2', {}, icon('warn'), `This plan breaks ${counted(list.length, 'hard rule')}`),
    el('ul', {class: 'bullets'}, list.slice(0, OPEN_BREACHES).map(line)),
    list.length > OPEN_BREACHES && el('details', {prop: {open: wasOpen}}, el('summary', {text: `${number(list.length - OPEN_BREACHES)} more`}),
      el('ul', {'class': 'bullets', 'tabindex': '0', 'role': 'group', 'aria-label': 'More broken rules'}, list.slice(OPEN_BREACHES).map(line))));
}

function tile(name, term, value, of, bad = false) {
  return el('div', {class: `figure-tile${bad ? ' bad' : ''}`, data: {figure: name}},
    el('dt', {text: term}), el('dd', {}, bad && icon('warn'), bad && ' ', value), of && el('dd', {class: 'of', text: of}));
}

function figures(board) {
  const f = board.figures;
  const {clock} = desk;
  const promisedOut = f.promises - f.promisesKept - f.lateJobs;
  fill(byId('figures'),
    el('h2', {class: 'unseen', text: 'What the plan comes to'}),
    el('dl', {id: 'figure-list'},
      tile('finish', 'Finished', f.planned ? clock.at(f.finishedAt) : 'nothing planned', `${counted(f.planned, 'job')} planned`),
      tile('changeover', 'Changeovers', length(f.changeoverSeconds), 'hands-on, all rigs'),
      tile('promises', 'Late', counted(f.lateJobs, 'job'),
        `${f.promises ? `${number(f.promisesKept)} of ${counted(f.promises, 'promise')} kept` : 'nothing is promised'}${f.lateSeconds ? `, ${lateness(f.lateSeconds)} late in all` : ''}`,
        f.lateJobs > 0),
      tile('leftout', 'Left out', counted(f.leftOut, 'job'), f.leftOut ? `weight ${number(f.leftOutPoints)}${promisedOut > 0 ? `, ${number(promisedOut)} of them promised` : ''}` : 'everything is planned', f.leftOut > 0),
      tile('points', 'Points', number(f.softPoints),
        `lateness ${number(f.latenessPoints)}, changeovers ${number(f.changeoverPoints)}, finishing ${number(f.finishingPoints)}`),
      f.hard > 0 && tile('hard', 'Broken rules', number(board.breaches.length), 'they stand above', true)),
    el('div', {id: 'bound'}, el('p', {text: f.bound ?? 'Nobody has worked out yet how good a plan can be.'}), el('p', {text: f.method})),
    rigUse(board));
}

function rigUse(board) {
  const wasOpen = /** @type {HTMLDetailsElement | null} */ (document.getElementById('rig-use'))?.open ?? false;
  return el('details', {id: 'rig-use', prop: {open: wasOpen}},
    el('summary', {text: 'Use of each rig'}),
    el('div', {class: 'scroller', tabindex: '0', role: 'region', 'aria-label': 'Use of each rig'}, el('table', {},
      el('caption', {text: 'By ISO 22400-2. Busy is from a job\'s first step to its unloading, allocation is busy of open time, utilisation is capture of busy time.'}),
      el('thead', {}, el('tr', {}, ['Rig', 'Jobs', 'Open', 'Busy', 'Setup', 'Capture', 'Allocation', 'Utilisation'].map((name, i) =>
        el('th', {scope: 'col', class: i ? 'figure' : '', text: name})))),
      el('tbody', {}, board.rigs.map(rig => el('tr', {data: {rig: rig.id}},
        el('th', {scope: 'row', text: rig.name === rig.id ? rig.id : `${rig.id} ${rig.name}`}),
        [number(rig.jobs.length), length(rig.plannedBusySeconds), length(rig.unitBusySeconds), length(rig.setupSeconds),
          length(rig.productionSeconds), percent(rig.allocationPercent), percent(rig.utilisationPercent)].map(text =>
          el('td', {class: 'figure', text}))))))));
}

/** The chosen job: what it is, what the plan does with it, what can be done, and why. */

import {byId, el, fill, icon} from '../base/dom.js';
import {hear} from '../base/bus.js';
import {CAUSES, lateness} from '../base/words.js';
import {pinWords} from '../chart/bar.js';
import {PARTS, partsOf} from '../chart/rows.js';
import {desk, people, rigName} from '../plan/desk.js';
import {openTab} from '../views/tabs.js';
import {forms} from '../touch/forms.js';
import {why} from './why.js';

function term(name, ...value) {
  return [el('dt', {text: name}), el('dd', {}, ...value)];
}

function chips(job) {
  const late = job.placing?.lateSeconds ?? 0;
  return el('p', {class: 'chips'},
    !job.placing && el('span', {class: 'chip late'}, icon('out'), `left out: ${CAUSES[job.leftOut?.cause] ?? 'not planned'}`),
    late > 0 && el('span', {class: 'chip late'}, icon('late'), `late ${lateness(late)}`),
    job.pin && el('span', {class: 'chip pinned'}, icon('pin'), pinWords(job.pin)),
    job.promise?.must && el('span', {class: 'chip broken'}, icon('must'), 'must be in time'));
}

function facts(job) {
  const {clock} = desk;
  const {placing} = job;
  return el('dl', {class: 'facts'},
    placing && term('Where', `${rigName(placing.rig)}, place ${placing.place + 1} of ${desk.rigs.get(placing.rig)?.jobs.length}`),
    placing && term('When', clock.span(placing.start, placing.end)),
    job.promise && term(job.promise.must ? 'Must be by' : 'Promised', clock.at(job.promise.due)),
    term('Weight', String(job.weight)),
    term('Article', job.article),
    term('Sample', job.sample, job.arrives !== null && `, comes ${clock.at(job.arrives)}`, job.leaves !== null && `, leaves ${clock.at(job.leaves)}`),
    term('Size', job.size),
    term('Placing', job.loading.join(' ')),
    term('Recipe', job.recipeName),
    job.setup.length > 0 && term('Setup', job.setup.join(', ')),
    term('Fits on', job.fits.length ? job.fits.join(', ') : 'no rig'),
    placing && placing.kit.length > 0 && term('Kit', placing.kit.join(', ')),
    job.note && term('Note', job.note));
}

function who(placing, part) {
  const ids = {changeover: placing.changeoverOperators, load: placing.loadOperators, capture: placing.captureOperators,
    unload: placing.unloadOperators}[part] ?? [];
  return people(ids).join(', ');
}

function parts(placing) {
  const {clock} = desk;
  return el('table', {class: 'parts-table'},
    el('caption', {class: 'unseen', text: 'Parts of the job'}),
    el('thead', {class: 'unseen'}, el('tr', {}, ['Part', 'Time', 'Who'].map(text => el('th', {scope: 'col', text})))),
    el('tbody', {}, partsOf(placing).map(part => el('tr', {},
      el('th', {scope: 'row'}, el('span', {class: `swatch part ${part.part}`, 'aria-hidden': 'true'}, el('b', {text: PARTS[part.part].letter})), ` ${PARTS[part.part].name}`),
      el('td', {text: clock.span(part.start, part.end)}),
      el('td', {text: who(placing, part.part)})))));
}

/** Sections that are open stay open while one goes from job to job. */
const openSections = new Set(['move']);

/** Opens a section from the next drawing of the panel on. @param {string} name */
export function openSection(name) {
  openSections.add(name);
}

/** @returns {HTMLDetailsElement} */
export function section(name, title, ...content) {
  return el('details', {
    class: 'section', data: {section: name}, prop: {open: openSections.has(name)},
    on: {toggle: event => {
      if (event.target.open) {
        openSections.add(name);
      } else {
        openSections.delete(name);
      }
    }},
  }, el('summary', {}, el('h3', {text: title})), ...content);
}

function show() {
  const panel = byId('panel-job');
  const job = desk.selected ? desk.jobs.get(desk.selected) : null;
  if (!job) {
    fill(panel, el('p', {class: 'hint', text: 'Choose a job in the chart or the table, or find one with the field above.'}));
    return;
  }
  const had = panel.contains(document.activeElement) ? document.activeElement?.id : '';
  fill(panel, el('article', {id: 'job', data: {job: job.id}},
    el('h2', {text: `${job.id} ${job.name}`}),
    chips(job),
    job.leftOut && el('ul', {class: 'note-late bullets'}, job.leftOut.sentences.map(text => el('li', {text}))),
    facts(job),
    job.cautions.length > 0 && el('div', {class: 'note-late'}, el('h3', {text: 'Cautions'}), el('ul', {class: 'bullets'}, job.cautions.map(text => el('li', {text})))),
    job.placing && section('parts', 'Times and people', parts(job.placing),
      job.placing.steps.length > 0 && [el('h4', {text: 'Changeover steps'}), el('ol', {class: 'numbered'}, job.placing.steps.map(text => el('li', {text})))]),
    forms(job),
    why(job)));
  if (had) {
    document.getElementById(had)?.focus();
  }
}

/** Follows the selection and the board. */
export function startJobPanel() {
  hear('select', ({open}) => {
    show();
    if (open) {
      openTab('job');
    }
  });
  hear('board', show);
  hear('move-form', id => {
    openSections.add('move');
    if (desk.selected !== id) {
      desk.selected = id;
    }
    show();
    openTab('job');
    document.getElementById('move-rig')?.focus();
  });
}

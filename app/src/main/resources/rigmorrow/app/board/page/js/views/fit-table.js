/** Which rig can take which job, with every reason why not. */

import {el, fill, icon} from '../base/dom.js';
import {counted} from '../base/words.js';
import {fillRows} from './table.js';

function cell(answer) {
  if (!answer) {
    return el('td', {class: 'unknown', text: 'not known'});
  }
  if (answer.fits) {
    return el('td', {class: 'fits'}, icon('yes'), ' fits');
  }
  return el('td', {class: 'misfit'}, el('details', {},
    el('summary', {}, icon('close'), ` no: ${short(answer.reasons[0])}${answer.reasons.length > 1 ? `, ${counted(answer.reasons.length - 1, 'more reason')}` : ''}`),
    el('ul', {class: 'bullets'}, answer.reasons.map(text => el('li', {text})))));
}

/** The first word or two of a reason, before its figures. */
function short(reason) {
  return reason.split(/[:,(]/)[0].trim().slice(0, 32);
}

/** What people call the fields of a shot list that are measured. */
const MEASURES = {lengthMm: 'length', widthMm: 'width', heightMm: 'height', massKg: 'mass'};

function row(job, rigs) {
  return el('tr', {data: {job: job.job}},
    el('th', {scope: 'row'}, `${job.job} ${job.name} `,
      job.estimated && el('span', {class: 'hint', text: ' (estimated size)'}),
      job.unmeasured.length > 0 && el('span', {class: 'chip late', text: `measure ${job.unmeasured.map(field => MEASURES[field] ?? field).join(', ')}`}),
      job.unmeasured.length === 0 && !job.fitsSomewhere && el('span', {class: 'chip late', text: 'no rig'})),
    job.cells.length === 0
      ? el('td', {colspan: String(rigs.length), class: 'unknown', text: 'It is not measured, so no rig was asked.'})
      : rigs.map((rig, i) => cell(job.cells[i])));
}

/**
 * The table with its filter.
 *
 * @param {any} fit a FitView
 * @param {string} id of the table
 */
export function fitTable(fit, id) {
  const trouble = fit.jobs.filter(job => !job.fitsSomewhere);
  const body = el('tbody');
  const caption = el('caption');
  const filter = el('select', {id: `${id}-filter`},
    el('option', {value: 'all', text: 'All jobs'}),
    el('option', {value: 'none', text: `No rig or not measured (${trouble.length})`}),
    el('option', {value: 'some', text: 'Not on every rig'}));
  const show = () => {
    const jobs = fit.jobs.filter(job => filter.value === 'all' || !job.fitsSomewhere
      || (filter.value === 'some' && job.cells.some(one => !one.fits)));
    caption.textContent = `${counted(jobs.length, 'job')} by ${counted(fit.rigs.length, 'rig')}; ${trouble.length === 0 ? 'every job fits somewhere' : `${counted(trouble.length, 'job')} without a rig`}.`;
    fillRows(body, jobs, job => row(job, fit.rigs));
  };
  filter.addEventListener('change', show);
  const holder = el('div');
  fill(holder,
    el('p', {}, el('label', {for: `${id}-filter`, text: 'Show '}), filter),
    el('div', {'class': 'scroller tall', 'tabindex': '0', 'role': 'region', 'aria-label': 'Table of jobs and rigs'},
      el('table', {id, class: 'fit'}, caption,
        el('thead', {}, el('tr', {}, el('th', {scope: 'col', text: 'Job'}), fit.rigs.map(rig =>
          el('th', {scope: 'col', text: rig.name === rig.id ? rig.id : `${rig.id} ${rig.name}`})))),
        body)));
  show();
  return holder;
}

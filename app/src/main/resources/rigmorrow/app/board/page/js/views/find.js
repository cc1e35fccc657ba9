/** Finds a job by id, article or name. */

import {byId, el, fill} from '../base/dom.js';
import {desk, select} from '../plan/desk.js';
import {view} from './views.js';

const MOST = 12;

/** @param {string} asked @returns {any[]} jobs, those that begin with it first */
function found(asked) {
  const text = asked.trim().toLowerCase();
  if (text === '' || !desk.board) {
    return [];
  }
  const rank = job => {
    const fields = [job.id, job.article, job.name].map(field => field.toLowerCase());
    if (fields[0] === text || fields[1] === text) {
      return 0;
    }
    return fields.some(field => field.startsWith(text)) ? 1 : fields.some(field => field.includes(text)) ? 2 : 3;
  };
  return desk.board.jobs.map(job => ({job, rank: rank(job)})).filter(one => one.rank < 3)
    .sort((one, other) => one.rank - other.rank).slice(0, MOST).map(one => one.job);
}

/** Wires the field. */
export function startFind() {
  const field = byId('find');
  const list = byId('find-list');
  let at = 0;
  let jobs = [];

  const close = () => {
    list.hidden = true;
    field.setAttribute('aria-expanded', 'false');
    field.removeAttribute('aria-activedescendant');
  };
  const mark = () => {
    [...list.children].forEach((option, i) => option.setAttribute('aria-selected', String(i === at)));
    if (jobs.length) {
      field.setAttribute('aria-activedescendant', `find-${at}`);
      list.children[at]?.scrollIntoView({block: 'nearest'});
    }
  };
  const choose = job => {
    close();
    field.value = '';
    select(job.id, {show: true, focus: true, open: true});
    if (!job.placing || view() !== 'plan') {
      byId('panel-job').focus();
    }
  };
  const look = () => {
    jobs = found(field.value);
    at = 0;
    fill(list, jobs.length || field.value.trim() === '' ? jobs.map((job, i) => el('li', {
      'id': `find-${i}`, 'role': 'option', 'aria-selected': 'false', 'data': {job: job.id},
      'on': {mousedown: event => event.preventDefault(), click: () => choose(job)},
    }, `${job.id} ${job.name} `, el('span', {class: 'soft', text: `${job.article}, ${job.placing ? `${job.placing.rig} ${desk.clock.at(job.placing.start)}` : 'left out'}`})))
      : el('li', {'role': 'option', 'aria-disabled': 'true', 'aria-selected': 'false', 'text': 'No job is called that.'}));
    list.hidden = field.value.trim() === '';
    field.setAttribute('aria-expanded', String(!list.hidden));
    mark();
  };
  field.addEventListener('input', look);
  field.addEventListener('focus', () => field.value && look());
  field.addEventListener('blur', close);
  field.addEventListener('keydown', event => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      at = Math.min(Math.max(0, at + (event.key === 'ArrowDown' ? 1 : -1)), Math.max(0, jobs.length - 1));
      mark();
    } else if (event.key === 'Enter' && jobs[at]) {
      event.preventDefault();
      choose(jobs[at]);
    } else if (event.key === 'Escape') {
      event.stopPropagation();
      if (field.value === '') {
        field.blur();
      }
      field.value = '';
      close();
    }
  });
}

/** What came of a comparison, as its files say it: sentences, figures with intervals, drawings, tables. */

import {read} from '../base/api.js';
import {byId, el, fill} from '../base/dom.js';
import {tell} from '../base/bus.js';
import {counted} from '../base/words.js';
import {figureTable, lanes, plane} from './charts.js';

const FILES = [['report.html', 'Report for the browser'], ['report.pdf', 'Report for paper (PDF)'], ['summary.csv', 'Figures for spreadsheets (CSV)'], ['summary.json', 'Figures for programs (JSON)']];

/** @type {any} the ReportView that is drawn; null for none */
let report = null;
/** Which plans the report was asked for: scenarios, change, how many. */
let asked = '';
let drawn = null;

/**
 * Loads the report of what there is, unless it is there. Changes are counted from the beginning by a server that was
 * started anew; the number of the scenarios is another then.
 *
 * @param {any} progress a ComparisonView
 * @param {number} scenarios their number; 0 where there are none
 */
export async function loadReport(progress, scenarios) {
  const key = `${scenarios} ${progress.change} ${progress.done}`;
  if (asked === key) {
    return;
  }
  asked = key;
  try {
    const answer = progress.done > 0 ? await read('/api/whatif/report') : null;
    report = answer?.sections.length || answer?.oneMore ? answer : null;
  } catch (failure) {
    asked = '';
    throw failure;
  }
}

/**
 * Draws the report, and what stands beside it while more plans are made.
 *
 * @param {any} progress a ComparisonView
 * @param {number} scenarios their number; 0 where there are none
 */
export function drawReport(progress, scenarios) {
  const holder = byId('report');
  const running = progress.state === 'RUNNING';
  holder.hidden = report === null && !(running && progress.done > 0);
  if (holder.hidden) {
    drawn = null;
    holder.replaceChildren();
    return;
  }
  if (drawn === null || drawn !== report) {
    drawn = report;
    const open = new Set([...holder.querySelectorAll('details[open]')].map(one => one.id));
    fill(holder, el('h3', {id: 'report-head', text: report ? report.title : 'Results so far'}), el('div', {id: 'report-live'}), report && whole(report, open));
  }
  live(progress, scenarios, running);
}

function live(progress, scenarios, running) {
  const line = byId('report-live');
  line.hidden = !running;
  if (!running) {
    line.replaceChildren();
    return;
  }
  if (line.childElementCount === 0) {
    fill(line, el('span', {id: 'report-rests'}), el('button', {id: 'report-now', type: 'button', text: 'Show what there is so far', on: {click: async () => {
      try {
        await loadReport(latest.progress, latest.scenarios);
        drawReport(latest.progress, latest.scenarios);
        document.getElementById('report-now')?.focus();
      } catch (failure) {
        tell('failure', failure);
      }
    }}}));
  }
  latest = {progress, scenarios};
  byId('report-rests').textContent = report ? `What is shown rests on ${counted(report.plans, 'plan')}; ${progress.done} are made by now.` : `${counted(progress.done, 'plan')} can be looked at.`;
}

/** @type {any} the ComparisonView that was drawn last, and the number of its scenarios */
let latest = null;

function whole(view, open) {
  return [
    el('p', {class: 'hint', text: view.subtitle}),
    view.warnings.map(text => el('p', {class: 'note-late', text})),
    view.first.length > 0 && el('ul', {id: 'report-first', class: 'bullets'}, view.first.map(text => el('li', {text}))),
    el('ul', {id: 'report-files', class: 'buttons'}, FILES.map(([name, text]) => el('li', {},
      el('a', {class: 'button', href: `/api/whatif/report/${name}`, data: {name}, download: name === 'report.html' ? false : `whatif-${name}`, target: name === 'report.html' ? '_blank' : false, rel: name === 'report.html' ? 'noopener' : false, text})))),
    el('div', {class: 'card'},
      el('h4', {text: 'In short'}),
      el('ul', {id: 'answers'}, view.answers.map(answer => el('li', {class: 'answer'},
        el('p', {}, el('strong', {text: answer.title}), ` ${answer.sentence}`), answer.more.map(text => el('p', {class: 'small soft', text}))))),
      view.savings && lanes(view.savings),
      view.luck && el('p', {id: 'luck', text: view.luck})),
    view.oneMore && oneMore(view.oneMore),
    el('div', {class: 'card'}, el('h4', {text: 'All figures'}), figureTable(view.figures, 'All figures, mean of the days')),
    view.sections.map((section, i) => part(section, open.size === 0 ? i === 0 : open.has(section.id))),
    el('details', {class: 'card', id: 'assumptions', prop: {open: open.has('assumptions')}}, el('summary', {}, el('h4', {text: 'What the figures rest on'})),
      el('ul', {class: 'bullets'}, view.assumptions.map(text => el('li', {text})))),
  ];
}

function oneMore(more) {
  return el('div', {class: 'card', id: 'one-more-buys'}, el('h4', {text: 'What to buy first: one more of each'}),
    el('p', {}, el('strong', {text: more.best})),
    el('p', {class: 'hint', text: 'Bought: what lateness, jobs left out, overtime and rig hours cost less in a day. Spent: more regular pay, and the price with interest and keeping in equal parts over the working days of its life. From 1 on a change earns what it costs. What the days cannot tell from luck stands below what they can.'}),
    figureTable(more.table, 'What one more of each buys'),
    lanes(more.chart));
}

function part(section, isOpen) {
  return el('details', {class: 'card scenario-part', id: section.id, prop: {open: isOpen}},
    el('summary', {}, el('h4', {text: section.answer.title})),
    el('p', {}, section.answer.title, ` ${section.answer.sentence}`),
    section.answer.more.map(text => el('p', {class: 'small soft', text})),
    el('dl', {class: 'fact-line'}, section.facts.map(([name, value]) => el('div', {}, el('dt', {text: name}), el('dd', {text: value})))),
    figureTable(section.figures, `Figures with intervals: ${section.answer.title}`),
    el('div', {class: 'pair'},
      section.spread && lanes(section.spread),
      (section.demand || section.demandBasis) && el('div', {}, section.demand && lanes(section.demand), section.demandBasis && el('p', {class: 'hint', text: section.demandBasis}))),
    plane(section.finishing),
    el('div', {class: 'pair'}, section.loads.map(plane)),
    el('details', {id: `${section.id}-tables`}, el('summary', {text: 'The drawings as tables'}),
      el('div', {class: 'pair'}, figureTable(section.byDay, `Day by day: ${section.answer.title}`, 'short'), figureTable(section.byHour, `In the course of a day: ${section.answer.title}`, 'short'))));
}

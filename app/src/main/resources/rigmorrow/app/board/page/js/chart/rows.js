/** The rows of the chart and the bars in them, worked out from the board; nothing here draws. */

import {counted} from '../base/words.js';
import {desk} from '../plan/desk.js';

/**
 * @typedef {object} Row
 * @property {string} id such as "rig:R1"
 * @property {'rig' | 'crew' | 'kit' | 'sample'} kind
 * @property {string} of id of the rig, operator, piece or sample
 * @property {string} name
 * @property {string} below a second line
 *
 * @typedef {object} Bar
 * @property {string} id
 * @property {string} row
 * @property {number} start second
 * @property {number} end second
 * @property {'job' | 'task' | 'use'} kind
 * @property {any} of the JobView, TaskView or UseView
 * @property {string} key changes with everything that is drawn
 *
 * @typedef {object} Ground
 * @property {string} id
 * @property {string} row
 * @property {number} start second
 * @property {number} end second
 * @property {'closed' | 'break'} kind
 */

/**
 * @param {{by: 'rig' | 'crew', kit: boolean, samples: boolean}} choice
 * @returns {{rows: Row[], bars: Bar[], grounds: Ground[]}}
 */
export function chartOf(choice) {
  const {board} = desk;
  const rows = [];
  const bars = [];
  const grounds = [];
  if (choice.by === 'rig') {
    rigs(board, rows, bars, grounds);
  } else {
    crew(board, rows, bars, grounds);
  }
  if (choice.kit) {
    for (const kit of board.kits) {
      for (const unit of kit.units) {
        used(rows, bars, 'kit', unit.id, kit.name, unit.uses);
      }
    }
  }
  if (choice.samples) {
    for (const sample of board.samples) {
      used(rows, bars, 'sample', sample.id, `Sample ${sample.id}`, sample.uses);
    }
  }
  return {rows, bars, grounds};
}

function rigs(board, rows, bars, grounds) {
  for (const rig of board.rigs) {
    const row = `rig:${rig.id}`;
    rows.push({
      id: row, kind: 'rig', of: rig.id, name: rig.name === rig.id ? rig.id : `${rig.id} ${rig.name}`,
      below: `${counted(rig.jobs.length, 'job')}, ${rig.allocationPercent.toFixed(0)} % busy`,
    });
    gaps(rig.open, board.horizonSeconds).forEach(([start, end], i) =>
      grounds.push({id: `closed:${rig.id}:${i}`, row, start, end, kind: 'closed'}));
    for (const id of rig.jobs) {
      const job = desk.jobs.get(id);
      const placing = job?.placing;
      if (placing) {
        bars.push({
          id: `job:${id}`, row, start: placing.start, end: placing.end, kind: 'job', of: job,
          key: JSON.stringify([placing, job.pin, job.promise, job.name, rig.jobs.length]),
        });
      }
    }
  }
}

function crew(board, rows, bars, grounds) {
  for (const person of board.operators) {
    const row = `crew:${person.id}`;
    const share = person.shiftSeconds === 0 ? 0 : 100 * person.handsOnSeconds / person.shiftSeconds;
    rows.push({
      id: row, kind: 'crew', of: person.id, name: person.name,
      below: `${counted(person.tasks.length, 'task')}, ${share.toFixed(0)} % busy`,
    });
    const there = [...person.shifts, ...person.breaks].sort((one, other) => one.start - other.start);
    gaps(there, board.horizonSeconds).forEach(([start, end], i) =>
      grounds.push({id: `closed:${person.id}:${i}`, row, start, end, kind: 'closed'}));
    person.breaks.forEach((span, i) =>
      grounds.push({id: `break:${person.id}:${i}`, row, start: span.start, end: span.end, kind: 'break'}));
    person.tasks.forEach((task, i) => bars.push({
      id: `task:${person.id}:${i}`, row, start: task.start, end: task.end, kind: 'task', of: task,
      key: `${task.job} ${task.rig} ${task.part} ${task.start} ${task.end}`,
    }));
  }
}

function used(rows, bars, kind, id, name, uses) {
  const row = `${kind}:${id}`;
  rows.push({id: row, kind, of: id, name, below: `${kind === 'kit' ? `${id}, ` : ''}${uses.length === 1 ? 'used once' : `used ${uses.length} times`}`});
  uses.forEach((use, i) => bars.push({
    id: `${row}:${i}`, row, start: use.start, end: use.end, kind: 'use', of: use,
    key: `${use.job} ${use.rig} ${use.from} ${use.start} ${use.end}`,
  }));
}

/** What lies between spans that are in order, from 0 to an end. */
export function gaps(spans, end) {
  const found = [];
  let at = 0;
  for (const span of spans) {
    if (span.start > at) {
      found.push([at, span.start]);
    }
    at = Math.max(at, span.end);
  }
  if (at < end) {
    found.push([at, end]);
  }
  return found;
}

/**
 * The parts of a job one after the other, with what lies between them as waiting.
 *
 * @param {any} placing a PlacingView
 * @returns {{part: string, start: number, end: number}[]}
 */
export function partsOf(placing) {
  const parts = [];
  let at = placing.start;
  const add = (part, span) => {
    if (!span || span.end <= at) {
      return;
    }
    if (span.start > at) {
      parts.push({part: 'waiting', start: at, end: span.start});
    }
    parts.push({part, start: Math.max(at, span.start), end: span.end});
    at = span.end;
  };
  add('changeover', placing.changeover);
  // Loading may go on while the rig warms up: the warm-up is drawn where nothing else is.
  if (placing.warmUp && placing.warmUp.start < placing.load.start) {
    add('warm-up', {start: placing.warmUp.start, end: Math.min(placing.warmUp.end, placing.load.start)});
  }
  add('load', placing.load);
  if (placing.warmUp && placing.warmUp.end > placing.load.end) {
    add('warm-up', {start: placing.load.end, end: Math.min(placing.warmUp.end, placing.capture.start)});
  }
  add('capture', placing.capture);
  add('unload', placing.unload);
  return parts;
}

/** What the parts are called, with the letter that stands on them. */
export const PARTS = {
  'changeover': {letter: 'C', name: 'Changeover', says: 'somebody changes the rig over'},
  'warm-up': {letter: 'H', name: 'Warm-up', says: 'after a changeover, nobody is needed'},
  'load': {letter: 'L', name: 'Load', says: 'somebody places and aligns the item'},
  'capture': {letter: 'P', name: 'Capture', says: 'pictures are taken'},
  'unload': {letter: 'U', name: 'Unload', says: 'somebody takes the item off'},
  'waiting': {letter: '…', name: 'Waiting', says: 'the rig waits for people, kit or a sample'},
};

/** The chart's axis in floor time. */

const {moment} = globalThis;

/**
 * Makes the dates with which vis-timeline walks along the axis follow the floor's zone: moment asks
 * for the offset whenever a date moves, so an hour that is skipped or comes twice gets its own step.
 *
 * @param {import('../base/time.js').FloorClock} clock
 */
export function useFloorTime(clock) {
  moment.updateOffset = (date, keepTime) => {
    const minutes = clock.offsetMinutes(date.valueOf());
    if (!date.isUTC || date.utcOffset() !== minutes) {
      date.utcOffset(minutes, keepTime);
    }
  };
  return date => moment(date);
}

const WITH_DAY = new Set(['weekday', 'day', 'week', 'month', 'year']);

/** @param {import('../base/time.js').FloorClock} clock */
export function axisFormat(clock) {
  return {
    minorLabels: (date, scale) => label(clock, date, scale),
    majorLabels: (date, scale) => {
      const second = clock.second(date.valueOf());
      return scale === 'second' || scale === 'millisecond' ? `${clock.day(second)} ${clock.clock(second)}` : clock.day(second);
    },
  };
}

function label(clock, date, scale) {
  const second = clock.second(date.valueOf());
  if (WITH_DAY.has(scale)) {
    return clock.day(second);
  }
  if (scale === 'second') {
    return String(second % 60 || clock.clock(second));
  }
  return clock.clock(second);
}

/** Steps of the axis, finest first, with their length in seconds. */
const STEPS = [
  ['minute', 1, 60], ['minute', 5, 300], ['minute', 10, 600], ['minute', 15, 900], ['minute', 30, 1800],
  ['hour', 1, 3600], ['hour', 2, 7200], ['hour', 3, 10_800], ['hour', 6, 21_600], ['hour', 12, 43_200],
  ['day', 1, 86_400], ['day', 2, 172_800], ['day', 5, 432_000],
];
/** Pixels that a label of hours and one of days take. */
const CLOCK_WIDTH = 56;
const DAY_WIDTH = 78;

/**
 * The finest step whose labels have room.
 *
 * @param {number} pixelsPerSecond
 * @returns {{scale: string, step: number}}
 */
export function axisStep(pixelsPerSecond) {
  const found = STEPS.find(([scale, , seconds]) =>
    Number(seconds) * pixelsPerSecond >= (scale === 'day' ? DAY_WIDTH : CLOCK_WIDTH)) ?? STEPS[STEPS.length - 1];
  return {scale: String(found[0]), step: Number(found[1])};
}

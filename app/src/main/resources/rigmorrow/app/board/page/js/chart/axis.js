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

/** Words and figures as people read them. The same rules as on the run sheets. */

const numbers = new Intl.NumberFormat('en-GB');

/** @param {number} value with thousands marked */
export function number(value) {
  return numbers.format(value);
}

/**
 * "1 job", "2 jobs".
 *
 * @param {number} count
 * @param {string} one
 * @param {string} [many] where adding an s is wrong
 */
export function counted(count, one, many) {
  return `${number(count)} ${count === 1 ? one : many ?? `${one}s`}`;
}

/**
 * To the second below an hour, from there whole minutes, rounded up.
 *
 * @param {number} seconds
 */
export function length(seconds) {
  if (seconds >= 3600) {
    const minutes = Math.ceil(seconds / 60);
    return `${number(Math.floor(minutes / 60))} h${minutes % 60 ? ` ${minutes % 60} min` : ''}`;
  }
  const minutes = Math.floor(seconds / 60);
  const rest = Math.round(seconds % 60);
  if (minutes === 0) {
    return `${rest} s`;
  }
  return `${minutes} min${rest ? ` ${rest} s` : ''}`;
}

/** How late, rounded up to minutes: "12 min", "1 h 5 min", "2 days 3 h". */
export function lateness(seconds) {
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 60) {
    return `${minutes} min`;
  }
  if (minutes < 24 * 60) {
    return `${Math.floor(minutes / 60)} h${minutes % 60 ? ` ${minutes % 60} min` : ''}`;
  }
  const hours = Math.ceil(seconds / 3600);
  return `${counted(Math.floor(hours / 24), 'day')}${hours % 24 ? ` ${hours % 24} h` : ''}`;
}

/** One decimal and the sign. */
export function percent(value) {
  return `${value.toFixed(1)} %`;
}

/** First letter large. */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "A", "A and B", "A, B and C". */
export function listed(words) {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** Why a job is left out, in two words. */
export const CAUSES = {
  NEEDS_MEASURING: 'needs measuring',
  NO_RIG: 'no rig can take it',
  NO_ROOM: 'no room',
  HELD_BACK: 'held back',
};

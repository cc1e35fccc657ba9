/** Words and figures as people read them. The same rules as on the server, which a test holds them against. */

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
 * A length of time in whole minutes, rounded up: "8 h 11 min". The rule is the server's.
 *
 * @param {number} seconds 0 or more
 */
export function length(seconds) {
  const minutes = Math.ceil(seconds / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return [hours ? `${hours} h` : '', rest || !hours ? `${rest} min` : ''].filter(Boolean).join(' ');
}

/** How late: like any length, from a day on whole days and hours: "2 days 3 h". */
export function lateness(seconds) {
  if (seconds < 24 * 3600) {
    return length(seconds);
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

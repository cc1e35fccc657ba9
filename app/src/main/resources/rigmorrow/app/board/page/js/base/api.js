/** Talks with the board's server. Every answer from 400 on becomes a Refusal. */

/**
 * What the server said instead of doing it.
 *
 * @property {number} status HTTP status; 0 when the server was not reached
 * @property {string[]} since what was kept since the revision that was asked about
 * @property {any[]} breaches hard rules that are the reason
 */
export class Refusal extends Error {
  /**
   * @param {number} status
   * @param {any} problem a ProblemView, or null
   */
  constructor(status, problem) {
    super(problem?.message ?? `The board's server answered ${status} without a reason.`);
    this.status = status;
    this.since = problem?.since ?? [];
    this.breaches = problem?.breaches ?? [];
  }
}

async function answer(path, options) {
  let response;
  try {
    response = await fetch(path, {...options, headers: {Accept: 'application/json', ...options.headers}});
  } catch (failure) {
    if (failure instanceof DOMException && failure.name === 'AbortError') {
      throw failure;
    }
    throw new Refusal(0, {message: 'The board\'s server does not answer. Is "rigmorrow board" still running?'});
  }
  const body = await response.json().catch(failure => {
    if (failure instanceof DOMException && failure.name === 'AbortError') {
      throw failure; // taken back while the answer came in
    }
    return null;
  });
  if (!response.ok || body === null) {
    throw new Refusal(response.status, body);
  }
  return body;
}

/**
 * @param {string} path such as "/api/board"
 * @param {AbortSignal} [signal]
 * @returns {Promise<any>}
 */
export function read(path, signal) {
  return answer(path, {signal});
}

/**
 * @param {string} path
 * @param {object} body becomes JSON
 * @param {AbortSignal} [signal]
 * @returns {Promise<any>}
 */
export function send(path, body, signal) {
  return answer(path, {
    method: 'POST',
    headers: {'Content-Type': 'application/json'},
    body: JSON.stringify(body),
    signal,
  });
}

/**
 * Sends a file as it is.
 *
 * @param {string} path
 * @param {Blob} file
 * @param {string} name as the user sees it
 * @returns {Promise<any>}
 */
export function sendFile(path, file, name) {
  return answer(path, {
    method: 'POST',
    headers: {'Content-Type': 'application/octet-stream', 'X-File-Name': encodeURIComponent(name)},
    body: file,
  });
}

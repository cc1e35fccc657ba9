/** What the browser remembers between visits. Nothing breaks where storage is switched off. */

/**
 * @param {string} name
 * @returns {string | null}
 */
export function recall(name) {
  try {
    return localStorage.getItem(`rigmorrow.${name}`);
  } catch {
    return null;
  }
}

/**
 * @param {string} name
 * @param {string | null} value null to forget
 */
export function remember(name, value) {
  try {
    if (value === null) {
      localStorage.removeItem(`rigmorrow.${name}`);
    } else {
      localStorage.setItem(`rigmorrow.${name}`, value);
    }
  } catch {
    // It holds for this visit only.
  }
}

// Keeps small things on this device, and says whether it could.

/** @param {string} name @returns {any} null where nothing is kept */
export function kept(name) {
  try {
    return JSON.parse(localStorage.getItem(`rindward.${name}`));
  } catch {
    return null;
  }
}

/** @param {string} name @param {any} value @returns {boolean} false where there is no room */
export function keep(name, value) {
  try {
    localStorage.setItem(`rindward.${name}`, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

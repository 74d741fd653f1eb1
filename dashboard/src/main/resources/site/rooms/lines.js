// Reads values, breaks and extremes off the shed's lines.

/**
 * What a line says at a moment: the values of the slot that the moment lies in, which are one
 * value or the lowest and the highest.
 * @param {{ seconds: number[], values: (number | null)[] }} line
 * @param {number} second after the line's begin
 * @param {number} slotSeconds
 * @returns {{ low: number, high: number } | null} null where nothing was measured
 */
export function valueAt({ seconds, values }, second, slotSeconds) {
  const slot = Math.floor(second / slotSeconds);
  let last = upperBound(seconds, second);
  if (last >= 0 && values[last] === null) {
    return null;
  }
  let low = Infinity;
  let high = -Infinity;
  for (let i = upperBound(seconds, (slot + 1) * slotSeconds - 1e-6); i >= 0; i -= 1) {
    if (seconds[i] < slot * slotSeconds) {
      break;
    }
    if (values[i] !== null) {
      low = Math.min(low, values[i]);
      high = Math.max(high, values[i]);
    }
  }
  if (low === Infinity && last >= 0) {
    low = values[last]; // Between two samples the earlier one holds.
    high = low;
  }
  return low === Infinity ? null : { low, high };
}

/**
 * A line up to a second and from then on; the second half is all of it where it begins later.
 * @param {{ seconds: number[], values: (number | null)[] }} line
 * @param {number} second after the line's begin
 */
export function halves({ seconds, values }, second) {
  const cut = upperBound(seconds, second) + 1;
  const part = (from, to) => ({ seconds: seconds.slice(from, to), values: values.slice(from, to) });
  return [part(0, cut), part(Math.max(0, cut - 1))];
}

/** The lowest and the highest value of lines; infinite where there is none. */
export const extremes = (lines) => {
  const known = lines.flatMap(({ values }) => values.filter((value) => value !== null));
  return [Math.min(...known), Math.max(...known)];
};

/** The stretches in which a line says nothing, in seconds after its begin. */
export function breaks({ seconds, values }, endSecond) {
  const found = [];
  if (seconds.length === 0 || seconds[0] > 0) {
    found.push([0, seconds[0] ?? endSecond]);
  }
  values.forEach((value, i) => {
    if (value === null) {
      found.push([seconds[i], seconds[i + 1] ?? endSecond]);
    }
  });
  return found;
}

/** The index of the last instant at or before a second; -1 if there is none. */
function upperBound(seconds, second) {
  let low = 0;
  let high = seconds.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (seconds[middle] <= second) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low - 1;
}

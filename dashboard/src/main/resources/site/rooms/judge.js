// How a value stands to its range, for drawing only: the shed has already decided what to do.

/**
 * @param {number | null} value
 * @param {number | null} low
 * @param {number | null} high
 * @returns {'unknown' | 'free' | 'low' | 'inside' | 'high'} limits count as inside
 */
export function standing(value, low, high) {
  if (value === null) {
    return 'unknown';
  }
  if (low === null || high === null) {
    return 'free';
  }
  return value < low ? 'low' : value > high ? 'high' : 'inside';
}

/** Tells whether a person should look at this room: something is wrong, or out of its range. */
export const needsAttention = (room) =>
  room.problem !== null || (room.targetLowC !== null && !room.inRange);

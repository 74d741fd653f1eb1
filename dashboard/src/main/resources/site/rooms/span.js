// Which stretch of time the room page shows, as its address says it; plain arithmetic, no page.

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const SHORTEST = 5 * MINUTE;
const LONGEST = 400 * DAY;

/** The named spans, each ending now. */
export const SPANS = { day: DAY, week: 7 * DAY, season: 182 * DAY };

/**
 * The stretch that a query names.
 * @param {URLSearchParams} query `span`, or `from` and `to` in epoch milliseconds and `within`, the
 *   span to come back to
 * @param {number} nowMs
 * @returns {{ name: string | null, within: string, fromMs: number, toMs: number }} without a name
 *   once zoomed
 */
export function stretchOf(query, nowMs) {
  const fromMs = Number(query.get('from'));
  const toMs = Number(query.get('to'));
  if (fromMs > 0 && toMs > fromMs) {
    const within = spanIn(query.get('within'));
    return { name: null, within, fromMs, toMs: Math.min(toMs, fromMs + LONGEST) };
  }
  const name = spanIn(query.get('span'));
  return { name, within: name, fromMs: nowMs - SPANS[name], toMs: nowMs };
}

const spanIn = (word) => (Object.hasOwn(SPANS, word) ? word : 'day');

/**
 * The query of a named span, or of a stretch that somebody chose.
 * @param {{ name?: string, within?: string, fromMs?: number, toMs?: number }} stretch
 * @param {string} beside the room that is compared; empty for none
 */
export const queryOf = ({ name, within, fromMs, toMs }, beside) =>
  `?${new URLSearchParams({
    ...(name
      ? { span: name }
      : { from: Math.round(fromMs), to: Math.round(toMs), within: within ?? 'day' }),
    ...(beside ? { beside } : {}),
  })}`;

/** The same length, moved by a part of itself, but not into the future. */
export function moved({ fromMs, toMs }, part, nowMs) {
  const by = Math.min((toMs - fromMs) * part, nowMs - toMs);
  return { fromMs: fromMs + by, toMs: toMs + by };
}

/** Longer or shorter around a moment, which stays where it is on the page. */
export function scaled({ fromMs, toMs }, factor, aroundMs, nowMs) {
  const length = Math.min(LONGEST, Math.max(SHORTEST, (toMs - fromMs) * factor));
  const share = (aroundMs - fromMs) / (toMs - fromMs);
  const from = aroundMs - share * length;
  const to = Math.min(from + length, nowMs);
  return { fromMs: to - length, toMs: to };
}

// What the shed is asked about a room, and how finely: no finer than the screen can show.
import { getJson } from '../lib/api.js';
import { SPANS } from './span.js';

/** Into how many parts the shed divides what is drawn, no fewer than a chart has pixels; 400 unasked. */
const SLOTS = [
  [matchMedia('(max-width: 440px)'), {}],
  [matchMedia('(max-width: 840px)'), { slots: 800 }],
  [matchMedia('all'), { slots: 1200 }],
];

/**
 * Asks for a room's air, what was switched and what happened, and the air of the room beside it.
 * @param {string} name
 * @param {{ name: string | null, fromMs: number, toMs: number }} stretch as `span.js` makes it
 * @param {{ beside: string, outdoors: boolean }} more `beside` is empty for no room
 * @param {AbortSignal} signal
 * @returns {Promise<{ air: object, switching: object, marks: object, other: object | null }>}
 */
export async function askAbout(name, stretch, { beside, outdoors }, signal) {
  const [, slots] = SLOTS.find(([screen]) => screen.matches);
  const drawn = { ...when(stretch), ...slots };
  const [air, switching, marks, other] = await Promise.all([
    getJson(address(name, 'climate', outdoors ? { ...drawn, outdoors } : drawn), signal),
    getJson(address(name, 'switching', drawn), signal),
    getJson(address(name, 'marks', when(stretch)), signal),
    beside === '' ? null : getJson(address(beside, 'climate', drawn), signal),
  ]);
  return { air: air.body, switching: switching.body, marks: marks.body, other: other?.body ?? null };
}

/** Where every sample of a room's stretch is handed over as a file. */
export const fileOf = (name, stretch) => address(name, 'samples.csv', when(stretch));

/** The last days by the shed's own clock, or what somebody chose. */
function when({ name, fromMs, toMs }) {
  const days = SPANS[name] / SPANS.day;
  return name === null ? { from: iso(fromMs), to: iso(toMs) } : days === 1 ? {} : { days };
}

/** To the letter as the page's address promises it (`PageStart`), where nothing is chosen. */
function address(room, what, fields) {
  const query = new URLSearchParams(fields).toString();
  return `/api/rooms/${encodeURIComponent(room)}/${what}${query === '' ? '' : `?${query}`}`;
}

const iso = (ms) => new Date(ms).toISOString();

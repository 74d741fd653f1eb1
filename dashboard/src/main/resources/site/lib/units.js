// The only place that turns numbers and times into text: the reader's units, the reader's locale.

import { words } from './words.js';

const STORED_AS = 'rindward.units';
const NBSP = '\u00a0';
const FAHRENHEIT_REGIONS = new Set(['US', 'LR', 'BS', 'BZ', 'KY', 'PW', 'FM', 'MH']);
const POUND_REGIONS = new Set(['US', 'LR']);
const YEARLESS_MS = 300 * 86_400_000;
const KG_PER_LB = 0.45359237; // exact: international avoirdupois pound of 1959

/** The reader's choice, remembered on this device. Emits `change`. */
class Units extends EventTarget {
  /** @type {'C' | 'F'} */
  temperature;
  /** @type {'kg' | 'lb'} */
  mass;

  constructor() {
    super();
    const region = regionOf(navigator.language);
    const stored = remembered();
    this.temperature = stored.temperature ?? (FAHRENHEIT_REGIONS.has(region) ? 'F' : 'C');
    this.mass = stored.mass ?? (POUND_REGIONS.has(region) ? 'lb' : 'kg');
  }

  /** @param {{ temperature?: 'C' | 'F', mass?: 'kg' | 'lb' }} choice */
  choose(choice) {
    Object.assign(this, choice);
    keepAll();
    this.dispatchEvent(new Event('change'));
  }
}

/** The reader's units. */
export const units = new Units();

/** A temperature as a number of the reader's degrees, for drawing. */
export const temperatureValue = (c) => (units.temperature === 'F' ? (c * 9) / 5 + 32 : c);

/** A difference or limit in the reader's degrees, without its unit. */
export const axisFigure = (value, digits) => number(value, digits);

/** The sign of the reader's temperature unit. */
export const temperatureSign = () => (units.temperature === 'F' ? '°F' : '°C');

/** A temperature to a tenth, without its unit. */
export const temperatureFigure = (c) => number(temperatureValue(c), 1);

/** A temperature to a tenth, with its unit. */
export const temperature = (c) => temperatureFigure(c) + NBSP + temperatureSign();

/**
 * A sentence of the shed, which writes every temperature as figures before a C, in the reader's degrees
 * and as exact as it was.
 * @param {string} sentence
 */
export const told = (sentence) =>
  sentence.replace(
    /(^|[^\w.])(-?\d+(?:\.\d+)?)( to )?(-?\d+(?:\.\d+)?)? C\b/g,
    (_, before, low, to = '', high = '') =>
      `${before}${degrees(low)}${to}${high && degrees(high)}${NBSP}${temperatureSign()}`,
  );

const degrees = (c) => number(temperatureValue(Number(c)), c.includes('.') ? 1 : 0);

/** A limit of a range: no tenth where it says nothing. */
export const temperatureLimit = (c) => {
  const value = Math.round(temperatureValue(c) * 10) / 10;
  return number(value, Number.isInteger(value) ? 0 : 1);
};

/** A relative humidity to a whole percent, without the sign. */
export const humidityFigure = (percent) => number(percent, 0);

/**
 * A value beside the range that it is judged by: with as many figures as it takes to stand on its own side
 * of a limit, so that what is outside is not printed inside.
 * @param {number | null} low null where there is no range
 * @param {number} digits how many it has otherwise
 * @param {(value: number) => number} shown a value in the reader's unit
 */
export const besideRange = (value, low, high, digits, shown = (v) => v) => {
  const limit = low === null ? null : value < low ? low : value > high ? high : null;
  const isBeyond = (n) =>
    limit === null || Math.sign(rounded(shown(value), n) - shown(limit)) === Math.sign(value - limit);
  const enough = [digits, digits + 1, digits + 2].find(isBeyond) ?? 3;
  return number(shown(value), enough);
};

const rounded = (value, digits) => Math.round(value * 10 ** digits) / 10 ** digits;

/** A part of one as a percentage, rounded down: nothing is done before it is done. */
export const share = (part) => number(Math.floor(part * 100), 0) + NBSP + '%';

/** A mass in the reader's unit. */
export const mass = (kg) =>
  units.mass === 'lb' ? number(kg / KG_PER_LB, 1) + NBSP + 'lb' : number(kg, 2) + NBSP + 'kg';

/** A weight of so many grams in the reader's unit, as exact as a scale told it: to the gram. */
export const grams = (g) =>
  units.mass === 'lb'
    ? number(g / 1000 / KG_PER_LB, 2) + NBSP + 'lb'
    : number(g / 1000, g % 10 === 0 ? 2 : 3) + NBSP + 'kg';

/** The sign of the reader's unit of mass. */
export const massSign = () => units.mass;

/** Whole grams of a figure typed in the reader's unit; NaN where it is none. */
export const typedGrams = (figure) =>
  Math.round(Number.parseFloat(figure) * (units.mass === 'lb' ? KG_PER_LB : 1) * 1000);

/** Degrees C of a figure typed in the reader's degrees. */
export const typedC = (figure) =>
  units.temperature === 'F' ? ((Number(figure) - 32) * 5) / 9 : Number(figure);

/** A temperature as somebody typed it, with its unit: a tenth only where there is one. */
export const ovenTemperature = (c) => temperatureLimit(c) + NBSP + temperatureSign();

/** A figure as it is typed, with the decimal sign of the reader's locale. */
export const typedFigure = (figure) => figure.replace('.', decimalSign());

/** What stands between whole and tenths in the reader's locale. */
export const decimalSign = () =>
  plain(1)
    .formatToParts(1.5)
    .find(({ type }) => type === 'decimal')?.value ?? '.';

/** A percentage to a tenth. */
export const percent = (value) => number(value, 1) + NBSP + '%';

/** A figure on a scale, to a tenth where it has one. */
export const figure = (value) => number(value, Number.isInteger(value) ? 0 : 1);

/** The size of a file in megabytes. */
export const megabytes = (bytes) => number(bytes / 1e6, 1) + NBSP + 'MB';

/** A count. */
export const count = (n) => number(n, 0);

/** Hours; tenths only below ten. */
export const hours = (h) => number(h, h < 10 ? 1 : 0) + NBSP + 'h';

/** A length of time, in the one unit that suits it. */
export function duration(seconds) {
  const [amount, unit] =
    seconds < 60
      ? [seconds, 'second']
      : seconds < 3600
        ? [seconds / 60, 'minute']
        : seconds < 48 * 3600
          ? [seconds / 3600, 'hour']
          : [seconds / 86_400, 'day'];
  return long(unit).format(amount);
}

/** How long ago, no finer than is worth looking at again. */
export const ago = (seconds) =>
  seconds < 20
    ? words.time.justNow
    : words.time.ago(duration(seconds < 60 ? Math.floor(seconds / 10) * 10 : seconds));

/** @type {string | undefined} the farm's, once the shed has told it */
let farmZone = remembered().zone;

/** Whatever is shown from now on is by the farm's clock. @param {string} zone as its IANA name */
export function useFarmZone(zone) {
  if (zone !== farmZone) {
    farmZone = zone;
    keepAll();
  }
}

/** The farm's zone where its clock shows another time than this device's; nothing where they agree. */
export const otherZone = (ms = Date.now()) =>
  farmZone !== undefined && farmMoment(ms, farmZone) !== farmMoment(ms, undefined) ? farmZone : null;

/** The time of day, with the date where it is not today's; by the farm's clock. */
export function moment(instant, timeZone = farmZone) {
  const at = new Date(instant);
  const today = dated('date', timeZone).format(at) === dated('date', timeZone).format(new Date());
  return dated(today ? 'time' : 'moment', timeZone).format(at);
}

/** A moment to the minute, or to the second, in the farm's own time zone. */
export const farmMoment = (ms, zone, seconds = false) =>
  dated(seconds ? 'second' : 'minute', zone).format(new Date(ms));

/** The time of day in the farm's own time zone. */
export const farmTime = (ms, zone) => dated('time', zone).format(new Date(ms));

/** Tells whether a day begins at this moment in the farm's own time zone. */
export const isFarmMidnight = (ms, zone) => midnight(zone).format(new Date(ms)) === '00:00';

/** The day in the farm's own time zone, with the year where it may be mistaken. */
export const farmDay = (ms, zone) =>
  Math.abs(Date.now() - new Date(ms)) > YEARLESS_MS
    ? farmDate(ms, zone)
    : dated('day', zone).format(new Date(ms));

/** The day with its year in the farm's own time zone. */
export const farmDate = (ms, zone) => dated('date', zone).format(new Date(ms));

const number = (value, digits) => plain(digits).format(value);

/** One of each is enough: a format takes long to make, and a page writes hundreds of figures. */
function kept(make) {
  const made = new Map();
  return (...how) => {
    const key = how.join();
    if (!made.has(key)) {
      made.set(key, make(...how));
    }
    return made.get(key);
  };
}

const plain = kept(
  (digits) =>
    new Intl.NumberFormat(undefined, {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
      signDisplay: 'negative',
    }),
);

const long = kept(
  (unit) =>
    new Intl.NumberFormat(undefined, {
      style: 'unit',
      unit,
      unitDisplay: unit === 'second' || unit === 'minute' ? 'short' : 'long',
      maximumFractionDigits: 0,
      roundingMode: 'floor',
    }),
);

const TIME = { hour: 'numeric', minute: '2-digit' };
const DAY = { day: 'numeric', month: 'short' };

const DATED = {
  time: TIME,
  day: DAY,
  date: { ...DAY, year: 'numeric' },
  moment: { ...DAY, ...TIME },
  minute: { weekday: 'short', ...DAY, ...TIME },
  second: { weekday: 'short', ...DAY, ...TIME, second: '2-digit' },
};

const dated = kept(
  (shape, timeZone) => new Intl.DateTimeFormat(undefined, { timeZone, ...DATED[shape] }),
);

const midnight = kept(
  (timeZone) => new Intl.DateTimeFormat('en-GB', { timeZone, timeStyle: 'short' }),
);

function keepAll() {
  try {
    const { temperature, mass } = units;
    localStorage.setItem(STORED_AS, JSON.stringify({ temperature, mass, zone: farmZone }));
  } catch {
    // A browser that keeps nothing still shows the choice until the page is closed.
  }
}

/** The region of a language: named, as in en-US, or else, at some cost, the likeliest. */
function regionOf(language) {
  return /-([A-Z]{2})\b/.exec(language)?.[1] ?? new Intl.Locale(language).maximize().region;
}

function remembered() {
  try {
    return JSON.parse(localStorage.getItem(STORED_AS)) ?? {};
  } catch {
    return {};
  }
}

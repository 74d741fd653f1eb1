// What the room page's two charts show: their lines, their bands, and the words for a moment.
import { html, svg } from 'lit';
import {
  axisFigure,
  temperature,
  temperatureSign,
  temperatureValue,
} from '../lib/units.js';
import { standing } from './judge.js';
import { breaks, extremes, halves, valueAt } from './lines.js';
import { words } from './words.js';

const text = words.room;
const TALL = 300;
const LOW = 190;
/** As `mark-lane.js` draws them. */
const SIGNS = {
  alarm: svg`<path class="alarm" d="M2 1V11M2 6H34" />`,
  in: svg`<path class="move" d="M12 2H24L18 10Z" />`,
  out: svg`<path class="move" d="M12 10H24L18 2Z" />`,
};
const NO_LINE = { seconds: [], values: [] };

/**
 * The temperature and the humidity chart of a room, or of the air around a lot.
 * @param {object} air the answer of `/api/rooms/{room}/climate`
 * @param {object} [with]
 * @param {string} [with.inside] what the line of the air itself is called
 * @param {object} [with.beside] the same answer for another room, to compare; null for none
 * @param {object[]} [with.marks] what happened, as `marks.js` makes it
 * @param {number} [with.bandFromMs] from when the band holds; what was before is not held against it
 */
export function airCharts(
  air,
  { inside = text.room, beside = null, marks = [], bandFromMs = 0 } = {},
) {
  const other = (line) => ({ name: beside?.room, style: 'chain', line: beside?.[line] ?? NO_LINE });
  return [
    chart(air, {
      label: `${words.rooms.temperature}, ${temperatureSign()}`,
      band: air.temperatureBand,
      bandFromMs,
      inUnits: temperatureValue,
      figure: temperature,
      wrong: { low: words.rooms.tooCold, high: words.rooms.tooWarm },
      height: TALL,
      lines: [
        { name: inside, style: 'solid', line: air.temperature },
        { name: text.dewPoint, style: 'dotted', line: air.dewPoint },
        { name: text.outdoors, style: 'dashed', line: air.outdoorTemperature },
        other('temperature'),
      ],
      marks,
    }),
    chart(air, {
      label: `${words.rooms.humidity}, %`,
      band: air.humidityBand,
      bandFromMs,
      inUnits: (percent) => percent,
      figure: (percent) => `${axisFigure(percent, 1)}\u00a0%`,
      wrong: { low: words.rooms.tooDry, high: words.rooms.tooDamp },
      height: LOW,
      lines: [
        { name: inside, style: 'solid', line: air.humidity },
        { name: text.outdoors, style: 'dashed', line: air.outdoorHumidity },
        other('humidity'),
      ],
    }),
  ];
}

function chart(air, { label, band, bandFromMs, inUnits, figure, wrong, height, lines, marks = [] }) {
  const fromMs = Date.parse(air.from);
  const toMs = Date.parse(air.to);
  const bandFrom = (bandFromMs - fromMs) / 1000;
  const [before, since] = halves(lines[0].line, bandFrom);
  const shown = [
    { ...lines[0], line: since },
    { ...lines[0], style: 'free', line: before },
    ...lines.slice(1),
  ].filter(({ line }) => line.seconds.length > 0);
  const drawn = shown.map(({ name, style, line }) => ({
    name,
    style,
    ...inReaders(line, fromMs / 1000, inUnits),
  }));
  const limits = band && { low: inUnits(band.low), high: inUnits(band.high) };
  const inside = lines[0].line;
  const other = shown.find(({ style }) => style === 'chain');
  const slotSeconds = air.slotMillis / 1000;
  return {
    label,
    height,
    zone: air.zone,
    fromMs: startMs(air),
    toMs,
    lines: drawn,
    range: roomFor(extremes(drawn), limits),
    band: limits && { ...limits, from: bandFromMs / 1000 },
    gaps: breaks(inside, (toMs - fromMs) / 1000).map((gap) =>
      gap.map((second) => fromMs / 1000 + second),
    ),
    marks,
    said: (second) => said(inside, second, slotSeconds, { band: second < bandFrom ? null : band, figure, wrong }),
    besideSaid: (second) =>
      other === undefined
        ? ''
        : text.besideSaid(other.name, said(other.line, second, slotSeconds, { figure, wrong })),
  };
}

/** A line in seconds of the epoch and in the reader's units. */
const inReaders = ({ seconds, values }, fromSecond, inUnits) => ({
  seconds: seconds.map((second) => fromSecond + second),
  values: values.map((value) => (value === null ? null : inUnits(value))),
});

/** The values and the band, with a little air around both. */
function roomFor([lowest, highest], band) {
  const low = Math.min(lowest, band?.low ?? Infinity);
  const high = Math.max(highest, band?.high ?? -Infinity);
  const air = Math.max((high - low) * 0.06, 0.3);
  return low > high ? [0, 1] : [low - air, high + air];
}

/** A record that begins in the middle is shown from where it begins, in epoch milliseconds. */
export const startMs = (air) => Date.parse(air.from) + (air.temperature.seconds[0] ?? 0) * 1000;

function said(line, second, slotSeconds, { band, figure, wrong }) {
  const value = valueAt(line, second, slotSeconds);
  if (value === null) {
    return text.notMeasured;
  }
  const how = [value.low, value.high]
    .map((each) => wrong[standing(each, band?.low ?? null, band?.high ?? null)])
    .find(Boolean);
  const figures =
    value.low === value.high
      ? figure(value.low)
      : text.between(figure(value.low), figure(value.high));
  return how ? `${figures}, ${how}` : figures;
}

/** Which line and which mark is which, by the way it is drawn. */
export const lineKey = ({ lines, band, marks }) =>
  html`<p class="line-key">
    ${lines
      .filter(({ style }) => style !== 'free')
      .map(
        ({ name, style }) =>
          html`<span
            ><svg viewBox="0 0 36 8" aria-hidden="true"><path class=${style} d="M0 4H36" /></svg>
            ${name}</span
          >`,
      )}
    ${band
      ? html`<span
          ><svg viewBox="0 0 36 12" aria-hidden="true"><rect x="1" y="1" width="34" height="10" /></svg>
          ${text.band}</span
        >`
      : ''}
    ${Object.entries(SIGNS)
      .filter(([kind]) => marks.some((mark) => mark.kind === kind))
      .map(
        ([kind, sign]) =>
          html`<span><svg viewBox="0 0 36 12" aria-hidden="true">${sign}</svg> ${text.mark[kind]}</span>`,
      )}
  </p>`;

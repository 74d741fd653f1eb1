// What the room page's two charts show: their lines, their bands, and the words for a moment.
import { html } from 'lit';
import {
  axisFigure,
  temperature,
  temperatureSign,
  temperatureValue,
} from '../lib/units.js';
import { words } from '../lib/words.js';
import { standing } from './judge.js';
import { breaks, columns, valueAt } from './lines.js';

const text = words.room;
const TALL = 300;
const LOW = 190;

/**
 * The temperature and the humidity chart of a room, or of the air around a lot.
 * @param {object} air the answer of `/api/rooms/{room}/climate`
 * @param {boolean} outdoors whether outdoor air is drawn too
 * @param {string} [inside] what the line of the air itself is called
 */
export function airCharts(air, outdoors, inside = text.room) {
  return [
    chart(air, {
      label: `${words.rooms.temperature}, ${temperatureSign()}`,
      band: air.temperatureBand,
      inUnits: temperatureValue,
      figure: temperature,
      wrong: { low: words.rooms.tooCold, high: words.rooms.tooWarm },
      height: TALL,
      lines: [
        { name: inside, style: 'solid', line: air.temperature },
        { name: text.dewPoint, style: 'dotted', line: air.dewPoint },
        { name: text.outdoors, style: 'dashed', line: air.outdoorTemperature, show: outdoors },
      ],
    }),
    chart(air, {
      label: `${words.rooms.humidity}, %`,
      band: air.humidityBand,
      inUnits: (percent) => percent,
      figure: (percent) => `${axisFigure(percent, 1)}\u00a0%`,
      wrong: { low: words.rooms.tooDry, high: words.rooms.tooDamp },
      height: LOW,
      lines: [
        { name: inside, style: 'solid', line: air.humidity },
        { name: text.outdoors, style: 'dashed', line: air.outdoorHumidity, show: outdoors },
      ],
    }),
  ];
}

function chart(air, { label, band, inUnits, figure, wrong, height, lines }) {
  const fromMs = Date.parse(air.from);
  const toMs = Date.parse(air.to);
  const shown = lines
    .filter(({ line }) => line.seconds.length > 0)
    .map((each) => ({ show: true, ...each }));
  const inside = lines[0].line;
  return {
    label,
    height,
    zone: air.zone,
    fromMs: startMs(air),
    toMs,
    lines: shown,
    columns: columns(
      shown.map(({ line }) => line),
      fromMs,
      inUnits,
    ),
    band: band && { low: inUnits(band.low), high: inUnits(band.high) },
    gaps: breaks(inside, (toMs - fromMs) / 1000).map((gap) =>
      gap.map((second) => fromMs / 1000 + second),
    ),
    said: (second) => said(inside, second, air.slotMillis / 1000, { band, figure, wrong }),
  };
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

/** Which line is which, by the way it is drawn. */
export const lineKey = ({ lines, band }) =>
  html`<p class="line-key">
    ${lines
      .filter(({ show }) => show)
      .map(
        ({ name, style }) =>
          html`<span
            ><svg viewBox="0 0 36 8" aria-hidden="true"><path class=${style} d="M0 4H36" /></svg>
            ${name}</span
          >`,
      )}
    ${band
      ? html`<span
          ><svg viewBox="0 0 36 12" aria-hidden="true"><rect width="36" height="12" /></svg>
          ${text.band}</span
        >`
      : ''}
  </p>`;

// <lot-curve .points .label .low .high .figure .step> is a small curve over days with its figures
// written beside it: weights of a fruit, or the share of fruits still sound.
import { html, nothing, svg } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { count, figure } from '../lib/units.js';
import { words } from './words.js';

const WIDTH = 320;
const HEIGHT = 130;
const LEFT = 44;
const BOTTOM = 22;
const TOP = 10;
const RIGHT = 14;

export class LotCurve extends PageElement {
  static properties = {
    /** Lines of `[day, value]`, each rising in its days. */
    lines: { attribute: false },
    label: {},
    high: { type: Number },
    /** Whether a value holds until the next, instead of leading to it. */
    step: { type: Boolean },
    unit: {},
  };

  constructor() {
    super();
    Object.assign(this, { lines: [], label: '', high: 0, step: false, unit: '' });
  }

  render() {
    const points = this.lines.flat();
    if (points.length === 0) {
      return nothing;
    }
    const lastDay = Math.max(1, ...points.map(([day]) => day));
    const values = points.map(([, value]) => value);
    const high = Math.max(this.high, ...values);
    const low = Math.min(0, ...values);
    const x = (day) => LEFT + (day / lastDay) * (WIDTH - LEFT - RIGHT);
    const y = (value) =>
      TOP + ((high - value) / (high - low || 1)) * (HEIGHT - TOP - BOTTOM);
    return html`<svg class="curve" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${this.label}>
      ${[low, high].map(
        (value) => svg`<path class="rule" d="M${LEFT} ${y(value)}H${WIDTH - RIGHT}" />
          <text x=${LEFT - 6} y=${y(value) + 4} text-anchor="end">${figure(value)}${this.unit}</text>`,
      )}
      <text x=${LEFT} y=${HEIGHT - 5}>${words.lot.day(count(0))}</text>
      <text x=${WIDTH - RIGHT} y=${HEIGHT - 5} text-anchor="end">
        ${words.lot.day(count(Math.round(lastDay)))}
      </text>
      ${this.lines.map((line) => svg`<path class="line" d=${this.#path(line, x, y)} />`)}
      ${this.step
        ? nothing
        : points.map(([day, value]) => svg`<circle cx=${x(day)} cy=${y(value)} r="3" />`)}
    </svg>`;
  }

  #path(line, x, y) {
    return line
      .map(([day, value], i) =>
        i === 0
          ? `M${x(day)} ${y(value)}`
          : this.step
            ? `H${x(day)}V${y(value)}`
            : `L${x(day)} ${y(value)}`,
      )
      .join('');
  }
}

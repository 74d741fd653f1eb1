// <liking-plot code .liking> draws how a variety was liked over the days it was kept: a dot a taste, this
// lot's filled, and the mean of what was tasted near each day as a line.
import { html, nothing, svg } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { count } from '../lib/units.js';
import { words } from './words.js';

const text = words.lot;
const WIDTH = 320;
const HEIGHT = 150;
const LEFT = 30;
const BOTTOM = 22;
const TOP = 10;
const RIGHT = 14;
const [LOW, HIGH] = [1, 9];

export class LikingPlot extends PageElement {
  static properties = {
    code: {},
    liking: { attribute: false },
  };

  render() {
    const { tastes, curve } = this.liking;
    const lastDay = Math.max(1, ...tastes.map(({ day }) => day));
    const x = (day) => LEFT + (day / lastDay) * (WIDTH - LEFT - RIGHT);
    const y = (value) => TOP + ((HIGH - value) / (HIGH - LOW)) * (HEIGHT - TOP - BOTTOM);
    const others = tastes.some(({ lot }) => lot !== this.code);
    return html`<svg class="curve" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${text.likingLabel}>
        ${[LOW, (LOW + HIGH) / 2, HIGH].map(
          (value) => svg`<path class="rule" d="M${LEFT} ${y(value)}H${WIDTH - RIGHT}" />
            <text x=${LEFT - 6} y=${y(value) + 4} text-anchor="end">${count(value)}</text>`,
        )}
        <text x=${LEFT} y=${HEIGHT - 5}>${text.day(count(0))}</text>
        <text x=${WIDTH - RIGHT} y=${HEIGHT - 5} text-anchor="end">${text.day(count(lastDay))}</text>
        ${curve.length === 0
          ? nothing
          : svg`<path class="line" d=${`M${curve.map(({ day, liking }) => `${x(day)} ${y(liking)}`).join('L')}`} />`}
        ${tastes.map(
          ({ lot, day, liking, isBlind }) =>
            svg`<circle class=${lot === this.code ? 'own' : 'other'} cx=${x(day)} cy=${y(liking)} r=${isBlind ? 5.5 : 3} />`,
        )}
      </svg>
      <p class="aside">${[text.likingKey, others ? text.likingOthers : ''].filter(Boolean).join(' ')}</p>`;
  }
}

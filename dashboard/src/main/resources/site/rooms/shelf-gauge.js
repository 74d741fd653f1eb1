// <shelf-gauge .value .low .high shape="fruit|drop" label> draws a range as a shelf with a lip at
// each limit, and the value as what lies on it: on the shelf all is well; past a lip it has fallen.
import { html, nothing, svg } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { standing } from './judge.js';

const WIDTH = 160;
const LIP_LEFT = 38;
const LIP_RIGHT = WIDTH - LIP_LEFT;
const SHELF_Y = 27;
const GROUND_Y = 37;
const MARGIN = 14;

export class ShelfGauge extends PageElement {
  static properties = {
    value: { attribute: false },
    low: { attribute: false },
    high: { attribute: false },
    shape: {},
    label: {},
  };

  render() {
    const how = standing(this.value, this.low, this.high);
    return html`<svg
      class="shelf-gauge"
      viewBox="0 0 ${WIDTH} 40"
      role="img"
      aria-label=${this.label}
      data-standing=${how}
    >
      <path class="ground" d="M0 ${GROUND_Y}H${WIDTH}" />
      <path class="shelf" d="M${LIP_LEFT} ${SHELF_Y - 7}V${GROUND_Y}M${LIP_RIGHT} ${SHELF_Y - 7}V${GROUND_Y}M${LIP_LEFT} ${SHELF_Y}H${LIP_RIGHT}" />
      ${how === 'unknown' ? nothing : this.#load(how)}
    </svg>`;
  }

  #load(how) {
    const x = position(this.value, this.low, this.high);
    const y = how === 'inside' ? SHELF_Y - 1.2 : GROUND_Y - 0.8;
    return svg`<g class="load" transform="translate(${x} ${y})">
      ${
        this.shape === 'drop'
          ? svg`<path d="M0 -21C3 -15 8 -12 8 -7.500A8 7.5 0 0 1 -8 -7.500C-8 -12 -3 -15 0 -21Z" />`
          : svg`<path d="M0 -16C-4 -18 -14 -17.5 -14 -8.5C-14 -1 -6 0 0 0C6 0 14 -1 14 -8.5C14 -17.5 4 -18 0 -16Z" />
              <path class="rib" d="M-4.5 -16C-8.5 -11 -8.5 -5 -5 -0.5M4.5 -16C8.5 -11 8.5 -5 5 -0.5" />
              <path class="stem" d="M0 -16C0 -19 1 -21 4.5 -21.5" />`
      }
    </g>`;
  }
}

/** Where the value lies: its own scale between the lips, squeezed towards the edges beyond them. */
function position(value, low, high) {
  const part = high > low ? (value - low) / (high - low) : 0.5;
  const inside = LIP_LEFT + part * (LIP_RIGHT - LIP_LEFT);
  if (part >= 0 && part <= 1) {
    return Math.min(Math.max(inside, LIP_LEFT + MARGIN), LIP_RIGHT - MARGIN);
  }
  return part < 0
    ? Math.max(MARGIN, Math.min(inside, LIP_LEFT - MARGIN - 5))
    : Math.min(WIDTH - MARGIN, Math.max(inside, LIP_RIGHT + MARGIN + 5));
}

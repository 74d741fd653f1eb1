// <lot-air code since cured> is the air around a lot, place after place, against the range it needs now.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { farmMoment, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { airCharts, lineKey, startMs } from '../rooms/charts.js';
import { words as airWords } from '../rooms/words.js';
import { words } from './words.js';

const text = words.lot;
const DAY_MS = 86_400_000;
const LONGEST_MS = 399 * DAY_MS;
const SPANS = { life: LONGEST_MS, week: 7 * DAY_MS, day: DAY_MS };
const AXIS_WIDTH = 46;

export class LotAir extends PageElement {
  static properties = {
    code: {},
    since: {},
    /** When it had cured; null while it has not. From then on the range is that of keeping. */
    cured: { attribute: false },
    /** The shed's clock when the lot was asked for. */
    at: {},
    span: { state: true },
    air: { state: true },
    failure: { state: true },
    cursorMs: { state: true },
  };

  #charts = [];
  #drawnFor = '';
  #asked = '';

  constructor() {
    super();
    Object.assign(this, { span: 'life', air: null, failure: null, cursorMs: null });
    new Watch(this, units);
  }

  willUpdate() {
    const asked = `${this.code} ${this.span}`;
    if (asked !== this.#asked && this.code) {
      this.#asked = asked;
      this.#load(asked);
    }
    const drawnFor = `${units.temperature} ${this.air?.from} ${this.air?.to} ${this.code}`;
    if (this.air !== null && drawnFor !== this.#drawnFor) {
      this.#drawnFor = drawnFor;
      this.#charts = airCharts(this.air, {
        inside: text.around,
        bandFromMs: this.cured ? Date.parse(this.cured) : 0,
      });
    }
  }

  render() {
    return html`<p class="spans" role="group" aria-label=${text.air}>
        ${Object.entries(text.airSpan).map(
          ([span, label]) =>
            html`<button
              type="button"
              aria-pressed=${span === this.span}
              @click=${() => (this.span = span)}
            >
              ${label}
            </button>`,
        )}
      </p>
      ${this.failure === null
        ? nothing
        : html`<p role="alert">${words.live.why[this.failure.kind]} ${this.failure.detail}</p>`}
      ${this.air === null ? nothing : this.#drawn()}`;
  }

  #drawn() {
    const { air } = this;
    const [from, to] = [startMs(air), Date.parse(air.to)];
    const second = this.cursorMs === null ? null : (this.cursorMs - Date.parse(air.from)) / 1000;
    return html`<label class="moment"
        ><span
          >${this.cursorMs === null
            ? html`<span class="aside">${airWords.room.lookAt}</span>`
            : html`<strong>${farmMoment(this.cursorMs, air.zone)}</strong>`}</span
        >
        <input
          type="range"
          min=${from}
          max=${to}
          step=${Math.max(1000, air.slotMillis)}
          .value=${String(this.cursorMs ?? to)}
          aria-label=${airWords.room.lookAt}
          aria-valuetext=${farmMoment(this.cursorMs ?? to, air.zone)}
          @input=${(event) => (this.cursorMs = Number(event.target.value))}
        />
      </label>
      ${this.#charts.map(
        (chart) =>
          html`<section class="air-of-room" aria-label=${chart.label}>
            <header>
              <h3>${chart.label}</h3>
              <p class="reading">${second === null ? nothing : chart.said(second)}</p>
            </header>
            <air-chart
              .chart=${chart}
              .cursorMs=${this.cursorMs}
              @look=${(event) => (this.cursorMs = Math.min(to, Math.max(from, event.detail)))}
            ></air-chart>
            ${lineKey(chart)}
          </section>`,
      )}`;
  }

  async #load(asked) {
    const toMs = Date.parse(this.at);
    const fromMs = Math.max(Date.parse(this.since), toMs - SPANS[this.span]);
    const slots = Math.max(100, Math.min(1200, Math.floor(this.clientWidth - AXIS_WIDTH)));
    const iso = (ms) => new Date(ms).toISOString();
    this.cursorMs = null;
    if (fromMs >= toMs) {
      return;
    }
    try {
      const { body } = await getJson(
        `/api/lots/${this.code}/air?from=${iso(fromMs)}&to=${iso(toMs)}&slots=${slots}`,
      );
      if (asked === this.#asked) {
        this.air = body;
        this.failure = null;
      }
    } catch (failure) {
      this.failure = failure;
    }
  }
}

// <room-page name> is one room over time: its air against its band, what was switched and why.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { farmMoment, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';
import { airCharts, lineKey, startMs } from './charts.js';
import { AXIS_WIDTH } from './air-chart.js';
import { moved, queryOf, scaled, SPANS, stretchOf } from './span.js';

const text = words.room;
const REFRESH_MS = 60_000;

export class RoomPage extends PageElement {
  static properties = {
    name: {},
    air: { state: true },
    switching: { state: true },
    failure: { state: true },
    busy: { state: true },
    cursorMs: { state: true },
    outdoors: { state: true },
  };

  #charts = [];
  #abort = null;
  #timer = 0;
  #asked = '';

  constructor() {
    super();
    this.air = null;
    this.switching = null;
    this.failure = null;
    this.busy = false;
    this.cursorMs = null;
    this.outdoors = false;
    new Watch(this, route);
  }

  connectedCallback() {
    super.connectedCallback();
    units.addEventListener('change', this.#redraw);
    this.#timer = setInterval(() => this.#stretch().name && this.#load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    units.removeEventListener('change', this.#redraw);
    clearInterval(this.#timer);
    this.#abort?.abort();
  }

  #redraw = () => this.#draw();

  #draw() {
    this.#charts = this.air === null ? [] : airCharts(this.air, this.outdoors);
    this.requestUpdate();
  }

  willUpdate(changed) {
    if (changed.has('air') || changed.has('outdoors')) {
      this.#draw();
    }
    const asked = this.name + route.query;
    if (asked !== this.#asked) {
      this.#asked = asked;
      this.cursorMs = null;
      this.#load();
    }
  }

  render() {
    if (this.air === null) {
      return this.failure === null ? html`<p>${words.page.loading}</p>` : this.#failed();
    }
    const { air } = this;
    const second = this.cursorMs === null ? null : (this.cursorMs - Date.parse(air.from)) / 1000;
    return html`${this.#spans()} ${this.failure === null ? nothing : this.#failed()}
      <div class="air-over-time" aria-busy=${this.busy}>
        ${this.#moment(air)}
        ${this.#charts.map(
          (chart) => html`<section class="air-of-room" aria-label=${chart.label}>
            <header>
              <h2>${chart.label}</h2>
              <p class="reading">${second === null ? nothing : chart.said(second)}</p>
            </header>
            <air-chart
              .chart=${chart}
              .cursorMs=${this.cursorMs}
              @look=${(event) => this.#look(event.detail)}
              @zoom=${(event) => this.#show(event.detail)}
            ></air-chart>
            ${lineKey(chart)}
          </section>`,
        )}
        ${this.switching === null
          ? nothing
          : html`<section class="switching" aria-labelledby="switching-heading">
              <h2 id="switching-heading">${words.rooms.outputs}</h2>
              <output-strips
                .view=${this.switching}
                .from=${(startMs(air) - Date.parse(air.from)) / 1000}
                .second=${second}
              ></output-strips>
              ${this.#changes()}
            </section>`}
      </div>`;
  }

  /** The moment looked at, moved by finger, mouse or arrow keys alike. */
  #moment(air) {
    const [from, to] = [startMs(air), Date.parse(air.to)];
    const at = this.cursorMs ?? to;
    const step = Math.max(1000, air.slotMillis);
    return html`<label class="moment">
      <span>${this.cursorMs === null
        ? html`<span class="aside">${text.lookAt}</span>`
        : html`<strong>${farmMoment(at, air.zone, air.slotMillis < 60_000)}</strong>`}</span>
      <input
        type="range"
        min=${from}
        max=${to}
        step=${step}
        .value=${String(at)}
        aria-label=${text.lookAt}
        aria-valuetext=${farmMoment(at, air.zone)}
        @input=${(event) => this.#look(Number(event.target.value))}
      />
    </label>`;
  }

  #spans() {
    const stretch = this.#stretch();
    const path = `/room/${encodeURIComponent(this.name)}`;
    const around = this.cursorMs ?? (stretch.fromMs + stretch.toMs) / 2;
    const button = (label, next) =>
      html`<button type="button" @click=${() => this.#show(next(Date.now()))}>${label}</button>`;
    return html`<nav class="spans" aria-label=${text.spans}>
      ${Object.keys(SPANS).map(
        (name) =>
          html`<a
            href="${path}?span=${name}"
            aria-current=${name === stretch.name ? 'true' : nothing}
            >${text.span[name]}</a
          >`,
      )}
      <span class="steps">
        ${button(text.earlier, (now) => moved(stretch, -0.5, now))}
        ${button(text.later, (now) => moved(stretch, 0.5, now))}
        ${button(text.closer, (now) => scaled(stretch, 0.4, around, now))}
        ${button(text.wider, (now) => scaled(stretch, 2.5, around, now))}
      </span>
      <label class="tick"
        ><input
          type="checkbox"
          .checked=${this.outdoors}
          @change=${(event) => (this.outdoors = event.target.checked)}
        />
        ${text.showOutdoors}</label
      >
      <a
        class="file"
        download
        href="/api/rooms/${encodeURIComponent(this.name)}/samples.csv?from=${iso(
          stretch.fromMs,
        )}&to=${iso(stretch.toMs)}"
        >${text.csv}</a
      >
    </nav>`;
  }

  #changes() {
    const { changes } = this.switching;
    if (changes.length === 0) {
      return html`<p class="aside">${text.nothingSwitched}</p>`;
    }
    return html`<details class="changes">
      <summary>${text.why}</summary>
      <ol>
        ${changes.map(
          (change) =>
            html`<li>
              <time datetime=${change.at}>${farmMoment(change.at, this.air.zone)}</time>
              <span><strong>${change.output} ${change.on ? words.rooms.on : words.rooms.off}</strong
                >: ${change.reason}</span>
            </li>`,
        )}
      </ol>
    </details>`;
  }

  #failed() {
    return html`<p class="notice" role="alert">
      ${words.live.why[this.failure.kind]} ${this.failure.detail}
      <button type="button" @click=${() => this.#load()}>${words.live.tryNow}</button>
    </p>`;
  }

  #stretch() {
    return stretchOf(route.query, Date.now());
  }

  #look(ms) {
    const [from, to] = [startMs(this.air), Date.parse(this.air.to)];
    this.cursorMs = Math.min(to, Math.max(from, ms));
  }

  #show(stretch) {
    route.go(`/room/${encodeURIComponent(this.name)}${queryOf(stretch)}`);
  }

  async #load() {
    this.#abort?.abort();
    const abort = new AbortController();
    this.#abort = abort;
    this.busy = true;
    const { fromMs, toMs } = this.#stretch();
    const slots = Math.max(100, Math.min(1200, Math.floor(this.clientWidth - AXIS_WIDTH)));
    const query = `?from=${iso(fromMs)}&to=${iso(toMs)}&slots=${slots}`;
    const path = `/api/rooms/${encodeURIComponent(this.name)}`;
    try {
      const [air, switching] = await Promise.all([
        getJson(`${path}/climate${query}`, abort.signal),
        getJson(`${path}/switching${query}`, abort.signal),
      ]);
      this.air = air.body;
      this.switching = switching.body;
      this.failure = null;
    } catch (failure) {
      if (abort.signal.aborted) {
        return;
      }
      this.failure = failure;
    }
    this.busy = false;
  }
}

const iso = (ms) => new Date(ms).toISOString();

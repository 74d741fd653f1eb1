// <room-page name> is one room over time: its air against its band and beside another room's, what
// happened there, what was switched and why.
import { html, nothing } from 'lit';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { seen } from '../lib/seen.js';
import { farmMoment, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { AXIS_WIDTH, FINGER_PX } from './air-chart.js';
import { airCharts, lineKey, startMs } from './charts.js';
import { happened, happenedNow } from './happened.js';
import { marksAt, marksOf } from './marks.js';
import { askAbout, fileOf } from './room-question.js';
import { spanBar } from './span-bar.js';
import { queryOf, stretchOf } from './span.js';
import { words } from './words.js';

const text = words.room;
const REFRESH_MS = 60_000;
const NOT_FOUND = 404;

export class RoomPage extends PageElement {
  static properties = {
    name: {},
    air: { state: true },
    /** The air of the room that is compared; null for none. */
    other: { state: true },
    marks: { state: true },
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
  #stretchAsked = '';

  constructor() {
    super();
    this.air = null;
    this.other = null;
    this.marks = [];
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
    const { other, marks } = this;
    this.#charts = this.air === null ? [] : airCharts(this.air, { beside: other, marks });
    this.requestUpdate();
  }

  willUpdate(changed) {
    if (changed.has('air') || changed.has('other')) {
      this.#draw();
    }
    const asked = `${this.name} ${route.query} ${this.outdoors}`;
    const { name, fromMs, toMs } = this.#stretch();
    const stretch = `${this.name} ${name ?? `${fromMs} ${toMs}`}`;
    if (stretch !== this.#stretchAsked) {
      this.#stretchAsked = stretch;
      this.cursorMs = null; // The moment looked at may lie elsewhere now.
    }
    if (asked !== this.#asked) {
      this.#asked = asked;
      this.#load();
    }
  }

  render() {
    if (this.air === null) {
      return this.failure === null ? html`<p>${words.page.loading}</p>` : this.#failed();
    }
    const { air } = this;
    const second = this.cursorMs === null ? null : (this.cursorMs - Date.parse(air.from)) / 1000;
    const look = (ms) => this.#look(ms);
    const isSeen = this.switching !== null;
    return html`${this.#spans()} ${this.failure === null ? nothing : this.#failed()}
      <div class="air-over-time" aria-busy=${this.busy}>
        ${this.#moment(air)}
        ${this.#charts.slice(0, isSeen ? this.#charts.length : 1).map(
          (chart) => html`<section class="air-of-room" aria-label=${chart.label}>
            <header>
              <h2>${chart.label}</h2>
              <p class="reading">${second === null ? nothing : chart.said(second)}</p>
            </header>
            ${this.other === null
              ? nothing
              : html`<p class="reading beside">
                  ${second === null ? nothing : chart.besideSaid(second)}
                </p>`}
            <air-chart
              .chart=${chart}
              .cursorMs=${this.cursorMs}
              zooms
              @look=${(event) => look(event.detail)}
              @zoom=${(event) => this.#change({ stretch: this.#within(event.detail) })}
            ></air-chart>
            ${lineKey(chart)} ${chart.marks.length > 0 ? happenedNow(this.#marksNow(air)) : nothing}
          </section>`,
        )}
        ${isSeen ? this.#below(air, second) : nothing}
      </div>`;
  }

  /** What lies below the charts; like the second of them, it comes when the first has been seen. */
  #below(air, second) {
    return html`<section class="happened" aria-labelledby="happened-heading">
        <h2 id="happened-heading">${text.happenedHeading}</h2>
        ${happened(this.marks, air.zone, (ms) => this.#look(ms))}
      </section>
      <section class="switching" aria-labelledby="switching-heading">
        <h2 id="switching-heading">${words.rooms.outputs}</h2>
        <output-strips
          room=${this.name}
          .view=${this.switching}
          .from=${(startMs(air) - Date.parse(air.from)) / 1000}
          .second=${second}
        ></output-strips>
        ${this.#changes()}
      </section>
      ${this.#file()}`;
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
    return spanBar({
      stretch,
      aroundMs: this.cursorMs ?? (stretch.fromMs + stretch.toMs) / 2,
      others: (live.view?.rooms ?? []).map(({ name }) => name).filter((name) => name !== this.name),
      beside: this.#beside,
      outdoors: this.outdoors,
      addressOf: (next) => this.#addressOf(next),
      change: (change) => this.#change(change),
    });
  }

  #file() {
    return html`<p class="ways">
      <a class="file" download href=${fileOf(this.name, this.#stretch())}>${text.csv}</a>
    </p>`;
  }

  #changes() {
    const { changes } = this.switching;
    if (changes.length === 0) {
      return html`<p class="aside">${text.nothingSwitched}</p>`;
    }
    const list = () =>
      html`<ol>
        ${changes.map(
          (change) =>
            html`<li>
              <time datetime=${change.at}>${farmMoment(change.at, this.air.zone)}</time>
              <span><strong>${change.output} ${change.on ? words.rooms.on : words.rooms.off}</strong
                >: ${told(change.reason)}</span>
            </li>`,
        )}
      </ol>`;
    return html`<folded-list .summary=${text.why} .list=${list}></folded-list>`;
  }

  #failed() {
    const { kind, detail, status } = this.failure;
    return html`<p class="notice" role="alert">
      ${status === NOT_FOUND ? detail : `${words.live.why[kind]} ${detail}`}
      <button type="button" @click=${() => this.#load()}>${words.live.tryNow}</button>
    </p>`;
  }

  #stretch() {
    return stretchOf(route.query, live.shedMs);
  }

  #look(ms) {
    const [from, to] = [startMs(this.air), Date.parse(this.air.to)];
    this.cursorMs = Math.min(to, Math.max(from, ms));
  }

  /** What happened at the moment looked at, or as near to it as a fingertip. */
  #marksNow(air) {
    const width = Math.max(1, this.clientWidth - AXIS_WIDTH);
    const slackMs = ((Date.parse(air.to) - startMs(air)) / width) * (FINGER_PX / 2);
    return this.cursorMs === null ? [] : marksAt(this.marks, this.cursorMs, slackMs);
  }

  get #beside() {
    const asked = route.query.get('beside') ?? '';
    return asked === this.name ? '' : asked;
  }

  #within(stretch) {
    return { ...stretch, within: this.#stretch().within };
  }

  #addressOf(stretch, beside = this.#beside) {
    return `/room/${encodeURIComponent(this.name)}${queryOf(stretch, beside)}`;
  }

  #change({ stretch, beside, outdoors }) {
    if (outdoors === undefined) {
      route.go(this.#addressOf(stretch ?? this.#stretch(), beside));
    } else {
      this.outdoors = outdoors;
    }
  }

  async #load() {
    this.#abort?.abort();
    const abort = new AbortController();
    this.#abort = abort;
    this.busy = true;
    const more = { beside: this.#beside, outdoors: this.outdoors };
    try {
      const answers = await askAbout(this.name, this.#stretch(), more, abort.signal);
      this.marks = marksOf(answers.marks, answers.air.zone);
      this.other = answers.other;
      this.air = answers.air;
      this.failure = null;
      this.busy = false;
      if (this.switching === null) {
        await seen();
      }
      if (!abort.signal.aborted) {
        this.switching = answers.switching;
      }
    } catch (failure) {
      if (abort.signal.aborted) {
        return;
      }
      this.failure = failure;
      this.busy = false;
    }
  }
}

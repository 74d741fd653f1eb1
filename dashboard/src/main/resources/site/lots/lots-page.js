// <lots-page></lots-page> is every lot: what is to be eaten first comes first, unless the reader wants
// another order. Several may be chosen and moved together.
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { moment } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { book } from './book.js';
import { words } from './words.js';

const text = words.lots;
const REFRESH_MS = 60_000;

const ORDERS = {
  eat: () => 0,
  code: (a, b) => a.code.localeCompare(b.code),
  harvest: (a, b) => Date.parse(b.harvestedAt) - Date.parse(a.harvestedAt),
  place: (a, b) => a.place.localeCompare(b.place),
};

export class LotsPage extends PageElement {
  static properties = {
    find: { state: true },
    /** The place whose lots are shown; all where it is empty. */
    place: {},
    state: { state: true },
    crop: { state: true },
    order: { state: true },
    picking: { state: true },
    picked: { state: true },
    /** What is open over the list: `{ kind, lots }`, `scan`, or nothing. */
    sheet: { state: true },
  };

  #timer = 0;

  constructor() {
    super();
    Object.assign(this, { find: '', place: '', state: '', crop: '', order: 'eat' });
    Object.assign(this, { picking: false, picked: [], sheet: null });
    [book, me].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    book.load();
    this.#timer = setInterval(() => book.load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  render() {
    const { view, failure } = book;
    if (view === null) {
      return html`${failure === null
        ? html`<p role="status">${words.page.loading}</p>`
        : html`<p class="notice" role="alert">
            ${words.live.why[failure.kind]} ${failure.detail}
            <button type="button" @click=${() => book.load()}>${words.live.tryNow}</button>
          </p>`}<outbox-bar></outbox-bar>`;
    }
    const lots = this.#shown();
    return html`${failure === null
        ? nothing
        : html`<p class="kept" role="status">${text.kept(moment(view.at))}</p>`}
      ${this.#ways()} ${view.lots.length === 0 ? nothing : this.#filters(view)}
      ${view.lots.length === 0
        ? html`<p class="notice">${text.none}</p>`
        : lots.length === 0
          ? html`<p class="notice">${text.noneFound}</p>`
          : nothing}
      <ul class="lot-rows">
        ${repeat(
          lots,
          (lot) => lot.code,
          (lot) =>
            html`<li>
              <lot-row
                .lot=${lot}
                .zone=${view.zone}
                .picking=${this.picking}
                .picked=${this.picked.includes(lot.code)}
                @pick=${() => this.#pick(lot.code)}
              ></lot-row>
            </li>`,
        )}
      </ul>
      ${this.#planned(view)}
      <p class="ways"><a href="/placards">${text.placards}</a></p>
      <div class="foot">
        ${this.picking ? this.#chosen() : nothing}
        <outbox-bar
          @again=${({ detail }) => (this.sheet = { kind: detail.kind, lots: detail.lots, before: detail })}
        ></outbox-bar>
      </div>
      ${this.sheet === 'scan'
        ? html`<scan-sheet @done=${() => (this.sheet = null)} @move=${this.#moveScanned}></scan-sheet>`
        : this.sheet === null
          ? nothing
          : html`<say-sheet .asked=${this.sheet} @done=${() => this.#done()}></say-sheet>`}`;
  }

  #ways() {
    if (!me.works) {
      return html`<p class="ways"><a href="/you">${text.signIn}</a></p>`;
    }
    return html`<p class="ways">
      <button type="button" class="does" @click=${() => (this.sheet = { kind: 'harvested', lots: [] })}>
        ${text.add}
      </button>
      <button
        type="button"
        aria-pressed=${this.picking}
        @click=${() => Object.assign(this, { picking: !this.picking, picked: [] })}
      >
        ${this.picking ? text.oneByOne : text.several}
      </button>
      <button type="button" @click=${() => (this.sheet = 'scan')}>${text.scan}</button>
    </p>`;
  }

  #filters(view) {
    const { lots } = book;
    const some = (values) => [...new Set(values)].sort((a, b) => a.localeCompare(b));
    const states = new Map(lots.filter((l) => l.verdict).map((l) => [l.verdict.state, l.verdict.words]));
    const crops = new Map(lots.map((lot) => [lot.crop, lot.cropName]));
    return html`<form class="filters" role="search" @submit=${(event) => event.preventDefault()}>
      <label
        ><span>${text.find}</span
        ><input
          type="search"
          name="find"
          autocomplete="off"
          .value=${this.find}
          @input=${(event) => (this.find = event.target.value)}
      /></label>
      <details>
        <summary>${text.filter}</summary>
        <div class="more">
          ${this.#choice('place', text.place, text.everywhere, some(lots.map((l) => l.place)).map((p) => [p, p]))}
          ${this.#choice('state', text.state, text.everyState, [...states])}
          ${this.#choice('crop', text.crop, text.everyCrop, [...crops])}
          ${this.#choice('order', text.order, null, Object.entries(text.orders))}
          <label class="tick"
            ><input
              type="checkbox"
              .checked=${book.all}
              @change=${(event) => book.show(event.target.checked)}
            />
            ${text.withEmpty}</label
          >
        </div>
      </details>
    </form>`;
  }

  #choice(name, label, all, options) {
    return html`<label
      ><span>${label}</span
      ><select name=${name} @change=${(event) => (this[name] = event.target.value)}>
        ${all === null ? nothing : html`<option value="" ?selected=${this[name] === ''}>${all}</option>`}
        ${options.map(
          ([value, shown]) =>
            html`<option value=${value} ?selected=${this[name] === value}>${shown}</option>`,
        )}
      </select></label
    >`;
  }

  #planned({ planned }) {
    return planned.length === 0
      ? nothing
      : html`<section class="planned" aria-labelledby="planned-heading">
          <h2 id="planned-heading">${text.planned}</h2>
          <ul>
            ${planned.map(
              (plan) =>
                html`<li>
                  <span class="painted">${plan.code}</span> <strong>${plan.variety || plan.cropName}</strong>
                  <span class="aside">${[plan.cropName, text.plot(plan.plot)].join(' · ')}</span>
                  ${me.works
                    ? html`<button
                        type="button"
                        aria-label="${text.add}: ${plan.code}"
                        @click=${() => (this.sheet = { kind: 'harvested', lots: [plan.code] })}
                      >
                        ${text.add}
                      </button>`
                    : nothing}
                </li>`,
            )}
          </ul>
        </section>`;
  }

  #chosen() {
    const { picked } = this;
    return html`<p class="chosen">
      <span role="status">${text.chosen(picked.length)}</span>
      <button
        type="button"
        class="does"
        ?disabled=${picked.length === 0}
        @click=${() => (this.sheet = { kind: 'moved', lots: picked })}
      >
        ${text.moveChosen(picked.length)}
      </button>
    </p>`;
  }

  /** The shed's own order stays where nothing else is asked for. */
  #shown() {
    const { find, place, state, crop, order } = this;
    const sought = find.trim().toLowerCase();
    const isSought = (lot) =>
      [lot.code, lot.variety, lot.cropName, lot.place, lot.plot ?? ''].some((field) =>
        field.toLowerCase().includes(sought),
      );
    return book.lots
      .filter((lot) => book.all || lot.fruits.sound > 0)
      .filter((lot) => place === '' || lot.place === place)
      .filter((lot) => state === '' || lot.verdict?.state === state)
      .filter((lot) => crop === '' || lot.crop === crop)
      .filter((lot) => sought === '' || isSought(lot))
      .sort(ORDERS[order]);
  }

  #pick(code) {
    this.picked = this.picked.includes(code)
      ? this.picked.filter((other) => other !== code)
      : [...this.picked, code];
  }

  #moveScanned = (event) => {
    this.sheet = { kind: 'moved', ...event.detail };
  };

  #done() {
    Object.assign(this, { sheet: null, picking: false, picked: [] });
  }
}

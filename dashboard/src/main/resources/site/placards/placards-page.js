// <placards-page></placards-page> prints what hangs at doors and on crates: a name to be read from
// across the shed, and a square that a telephone reads.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { farmDate } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { book } from '../lots/book.js';
import { nameOf } from '../lots/sentences.js';
import { isReachable, printWithSquares, square } from './square.js';
import { words } from './words.js';

const text = words.placards;

export class PlacardsPage extends PageElement {
  static properties = {
    /** What goes to the printer: `places` or `crates`. */
    printed: { state: true },
    /** Names and codes that are left out. */
    left: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { printed: 'places', left: [] });
    new Watch(this, book);
  }

  connectedCallback() {
    super.connectedCallback();
    book.load();
  }

  render() {
    const { view, failure } = book;
    if (view === null) {
      return html`<p role="status">
        ${failure === null ? words.page.loading : `${words.live.why[failure.kind]} ${failure.detail}`}
      </p>`;
    }
    const lots = book.lots.filter((lot) => lot.fruits.sound > 0);
    return html`<p class="aside on-screen">${text.why}</p>
      ${isReachable()
        ? nothing
        : html`<p class="problem on-screen" role="alert">${text.notReachable(location.host)}</p>`}
      <section class="placards" data-printed=${this.printed === 'places'} aria-labelledby="places">
        <h2 class="on-screen" id="places">${text.places}</h2>
        ${this.#printer('places')}
        ${view.places.map((name) => this.#placard(name, view.rooms.includes(name)))}
      </section>
      <section class="labels" data-printed=${this.printed === 'crates'} aria-labelledby="crates">
        <h2 class="on-screen" id="crates">${text.crates}</h2>
        ${lots.length === 0
          ? html`<p class="aside on-screen">${text.noCrates}</p>`
          : this.#printer('crates')}
        ${lots.map((lot) => this.#label(lot, view.zone))}
      </section>`;
  }

  #printer(what) {
    return html`<p class="ways on-screen">
      <button type="button" @click=${() => this.#print(what)}>${text.print[what]}</button>
    </p>`;
  }

  #placard(name, isRoom) {
    const address = `${location.origin}/${isRoom ? 'room' : 'place'}/${encodeURIComponent(name)}`;
    return html`<article class="placard" data-left=${this.left.includes(name)}>
      <h3>${name}</h3>
      ${square(address, text.square(name))}
      <p>${text.scan}</p>
      ${this.#tick(name)}
    </article>`;
  }

  #label(lot, zone) {
    return html`<article class="label" data-left=${this.left.includes(lot.code)}>
      ${square(`${location.origin}/lot/${lot.code}`, text.square(lot.code))}
      <div>
        <h3>${lot.code}</h3>
        <p>${nameOf(lot)}</p>
        <p>${lot.variety === '' ? '' : lot.cropName}</p>
        <p>${text.harvested(farmDate(lot.harvestedAt, zone))}</p>
      </div>
      ${this.#tick(lot.code)}
    </article>`;
  }

  #tick(name) {
    return html`<label class="tick on-screen"
      ><input
        type="checkbox"
        aria-label="${text.tick}: ${name}"
        .checked=${!this.left.includes(name)}
        @change=${(event) => this.#leave(name, !event.target.checked)}
      />
      ${text.tick}</label
    >`;
  }

  #leave(name, isLeft) {
    this.left = isLeft ? [...this.left, name] : this.left.filter((other) => other !== name);
  }

  async #print(what) {
    this.printed = what;
    await this.updateComplete;
    await printWithSquares(this);
  }
}

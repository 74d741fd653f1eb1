// <kitchen-sheet name> is what the cook goes by and each taster's link; shut until it is asked for,
// because it tells what is in the cups.
import { html, nothing } from 'lit';
import { getJson, send } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { grams, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { isReachable, printWithSquares, square } from '../placards/square.js';
import { sentence } from '../you/form.js';
import { words } from './words.js';

const text = words.tastings;

export class KitchenSheet extends PageElement {
  static properties = {
    name: {},
    view: { state: true },
    isShown: { state: true },
    /** The fruit that is being noted, as `sample fruit`. */
    cooking: { state: true },
    copied: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { name: '', view: null, isShown: false, cooking: '', copied: '', refusal: '' });
    new Watch(this, units);
  }

  connectedCallback() {
    super.connectedCallback();
    this.#load();
  }

  render() {
    if (this.view === null) {
      return this.refusal === '' ? nothing : html`<p class="problem">${this.refusal}</p>`;
    }
    const { trays, bitter } = this.view;
    return html`${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
    ${bitter.length === 0
        ? nothing
        : html`<p class="problem" role="alert">${text.bitter(bitter)}</p>`}
      <section class="links-of-tasters" aria-labelledby="links-heading">
        <h2 id="links-heading">${text.link}</h2>
        <p class="aside on-screen">${text.linkWhy}</p>
        ${isReachable()
          ? nothing
          : html`<p class="problem on-screen">${text.notReachable(location.host)}</p>`}
        <ul class="links">
          ${trays.map((tray) => this.#link(tray))}
        </ul>
        <p class="ways on-screen">
          <button type="button" @click=${() => this.#print('links')}>${text.printSquares}</button>
        </p>
      </section>
      <section class="for-the-cook" aria-labelledby="kitchen-heading">
        <h2 id="kitchen-heading">${text.kitchen}</h2>
        <p class="aside">${text.kitchenWhy}</p>
        <p class="ways on-screen">
          <button type="button" aria-expanded=${this.isShown} @click=${() => this.#show()}>
            ${this.isShown ? text.hide : text.show}
          </button>
          ${this.isShown
            ? html`<button type="button" @click=${() => this.#print('cook')}>${text.printKitchen}</button>`
            : nothing}
        </p>
        ${this.isShown ? this.#kitchen(this.view) : nothing}
      </section>`;
  }

  /** Over plain HTTP a browser copies nothing for a page, so the address is written out. */
  #link({ taster, link }) {
    const address = location.origin + link;
    return html`<li>
      <a href=${link}>${taster}</a>
      ${navigator.clipboard === undefined
        ? html`<span class="address">${address}</span>`
        : html`<button
            type="button"
            aria-label="${text.copy}: ${taster}"
            @click=${() => this.#copy(taster, address)}
          >
            ${this.copied === taster ? text.copied : text.copy}
          </button>`}
      <details class="as-square" ?open=${this.getAttribute('printing') === 'links'}>
        <summary>${text.asSquare}</summary>
        ${square(address, text.squareOf(taster))}
      </details>
    </li>`;
  }

  /** On paper there are the squares with their names and nothing of what is in a cup, or only that. */
  async #print(what) {
    this.setAttribute('printing', what);
    this.requestUpdate();
    await this.updateComplete;
    await printWithSquares(this);
    this.removeAttribute('printing');
  }

  async #copy(taster, address) {
    try {
      await navigator.clipboard.writeText(address);
      this.copied = taster;
    } catch {
      this.refusal = text.notCopied;
    }
  }

  #kitchen({ pots, trays }) {
    return html`<h3>${text.pots}</h3>
      <ul class="pots">
        ${pots.map(
          ({ sample, cropName, variety, fruits, cooked }) =>
            html`<li>
              <strong>${text.pot(sample, [variety, cropName].filter(Boolean).join(', '))}</strong>
              ${fruits.map((fruit) => this.#fruit(sample, fruit, cooked))}
            </li>`,
        )}
      </ul>
      <h3>${text.serve}</h3>
      <ul class="trays">
        ${trays.map(
          ({ taster, cups }) =>
            html`<li>
              <strong>${taster}</strong>
              <ol>
                ${cups.map(({ code, sample }) => html`<li>${text.filled(code, sample)}</li>`)}
              </ol>
            </li>`,
        )}
      </ul>`;
  }

  /** What was noted of a fruit, or the way to note it. */
  #fruit(sample, fruit, cooked) {
    const note = cooked.find((each) => each.fruit === fruit);
    const key = `${sample} ${fruit}`;
    return note
      ? html`<p class="cooked">
          ${text.cookedSo(fruit, seenOf(note))}
          <button
            type="button"
            class="on-screen"
            aria-label=${text.uncookIt(sample, fruit)}
            @click=${() => this.#uncook(sample, fruit)}
          >
            ${text.uncook}
          </button>
        </p>`
      : this.cooking === key
        ? html`<cook-form
            name=${this.name}
            .sample=${sample}
            .fruit=${fruit}
            @leave=${() => (this.cooking = '')}
            @noted=${({ detail }) => Object.assign(this, { view: detail, cooking: '' })}
          ></cook-form>`
        : html`<p class="ways on-screen">
            <button type="button" @click=${() => (this.cooking = key)}>${text.cookIt(fruit)}</button>
          </p>`;
  }

  /** It lies in its lot again; who looks at a tasting that is closed is told why not. */
  async #uncook(sample, fruit) {
    const of = [this.name, 'cooked', sample, fruit].map(encodeURIComponent).join('/');
    try {
      this.view = await send('DELETE', `/api/tastings/${of}`);
      this.refusal = '';
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }

  #show() {
    this.isShown = !this.isShown;
    this.#load();
  }

  async #load() {
    try {
      this.view = (await getJson(`/api/tastings/${encodeURIComponent(this.name)}/kitchen`)).body;
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }
}

/** What was seen of a fruit, in words; nothing where nobody looked. */
const seenOf = ({ minutes, weightGrams, fleshMm, seeds, freeLiquid, rotInside, found, doneness }) =>
  [
    minutes === null ? '' : words.cook.took(minutes),
    weightGrams === null ? '' : grams(weightGrams),
    fleshMm === null ? '' : words.cook.flesh(fleshMm),
    seeds === null ? '' : words.cook.seedsWere(words.cook.seed[seeds]),
    freeLiquid ? words.cook.freeLiquid : '',
    rotInside ? words.cook.rotInside : '',
    ...found.map((harm) => words.cook[harm] ?? harm),
    doneness,
  ]
    .filter(Boolean)
    .join(', ');

// <kitchen-sheet name> is what the cook goes by and each taster's link; shut until it is asked for,
// because it tells what is in the cups.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { words } from '../lib/words.js';
import { sentence } from '../you/form.js';

const text = words.tastings;

export class KitchenSheet extends PageElement {
  static properties = {
    name: {},
    view: { state: true },
    isShown: { state: true },
    copied: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { name: '', view: null, isShown: false, copied: '', refusal: '' });
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
      <section aria-labelledby="links-heading">
        <h2 id="links-heading">${text.link}</h2>
        <p class="aside">${text.linkWhy}</p>
        <ul class="links">
          ${trays.map((tray) => this.#link(tray))}
        </ul>
      </section>
      <section aria-labelledby="kitchen-heading">
        <h2 id="kitchen-heading">${text.kitchen}</h2>
        <p class="aside">${text.kitchenWhy}</p>
        <p class="ways">
          <button type="button" aria-expanded=${this.isShown} @click=${() => this.#show()}>
            ${this.isShown ? text.hide : text.show}
          </button>
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
    </li>`;
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
              <span class="aside">${text.fruits(fruits, cooked)}</span>
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

// <tasting-page name> is one tasting: how far the tasters are, and what it says once it is closed.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { AskingElement } from '../lib/asking-element.js';
import { me } from '../lib/me.js';
import { farmDay, ovenTemperature, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { sentence } from '../you/form.js';
import { words } from './words.js';

const text = words.tastings;
const REFRESH_MS = 5_000;
const NOT_FOUND = 404;

export class TastingPage extends AskingElement {
  static properties = {
    name: {},
    asking: { state: true },
    refusal: { state: true },
  };

  #timer = 0;

  constructor() {
    super();
    Object.assign(this, { name: '', asking: false, refusal: '' });
    [me, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    this.#timer = setInterval(() => this.view?.result === null && this.load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  why(failure) {
    return failure.status === NOT_FOUND ? text.unknown : super.why(failure);
  }

  shown(view) {
    const { tasting, result } = view;
    return html`<p class="standing" role="status">
        ${result === null
          ? text.underWay(tasting.scored, tasting.cups)
          : text.closed(farmDay(tasting.closedAt, view.zone))}
      </p>
      <p class="aside">
        ${text.made(tasting.samples, tasting.tasters)}. ${result === null ? tasting.blinding : nothing}
      </p>
      ${this.#preparation(view)}
      ${result === null ? this.#underWay(view) : html`<tasting-result .result=${result}></tasting-result>`}`;
  }

  #preparation({ preparation, heatC, servedAtC }) {
    const parts = [
      ...preparation,
      heatC === null ? '' : text.heat(ovenTemperature(heatC)),
      servedAtC === null ? '' : text.served(ovenTemperature(servedAtC)),
    ].filter(Boolean);
    return parts.length === 0
      ? nothing
      : html`<p class="aside">${text.preparation}: ${parts.join(', ')}.</p>`;
  }

  #underWay({ tasters, warmUp, tasting, orders }) {
    return html`${warmUp === null ? nothing : html`<p>${text.warmUp(warmUp)}</p>`}
      <section aria-labelledby="table-heading">
        <h2 id="table-heading">${text.tasters}</h2>
        <ul class="tasters">
          ${tasters.map((taster) => this.#taster(taster))}
        </ul>
        <details class="others">
          <summary>${text.orders}</summary>
          ${orders.map((sentence) => html`<p class="aside">${sentence}</p>`)}
        </details>
      </section>
      ${me.isOwner
        ? html`${this.#end(tasting, this.view.fruitsOpen)}<kitchen-sheet name=${this.name}></kitchen-sheet>`
        : html`<p class="aside">${text.byOwner}</p>`}`;
  }

  #taster({ name, cups }) {
    const done = cups.filter((cup) => cup.scored).length;
    return html`<li>
      <strong>${name}</strong> <span>${text.progress(done, cups.length)}</span>
      <ol class="cups">
        ${cups.map(
          ({ code, scored }) =>
            html`<li data-scored=${scored}>
              <span aria-hidden="true">${code}</span
              ><span class="visually-hidden">${scored ? text.cupDone(code) : text.cupOpen(code)}</span>
            </li>`,
        )}
      </ol>
    </li>`;
  }

  #end({ cups, scored }, fruitsOpen) {
    return html`<section class="end" aria-label=${text.end}>
      ${this.asking
        ? html`<p>${text.endAsk(cups - scored)}</p>
            ${fruitsOpen === 0 ? nothing : html`<p>${text.fruitsAsk(fruitsOpen)}</p>`}
            <p class="ways">
              ${fruitsOpen === 0
                ? html`<button type="button" @click=${() => this.#close(null)}>${text.endYes}</button>`
                : html`<button type="button" @click=${() => this.#close('as-planned')}>
                      ${text.asPlanned}
                    </button>
                    <button type="button" @click=${() => this.#close('not-known')}>
                      ${text.notKnown}
                    </button>`}
              <button type="button" @click=${() => (this.asking = false)}>${text.endNo}</button>
            </p>`
        : html`<p class="ways">
            <button type="button" ?disabled=${scored === 0} @click=${() => (this.asking = true)}>
              ${text.end}
            </button>
          </p>`}
      ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
    </section>`;
  }

  async #close(fruits) {
    try {
      this.view = await send('POST', `${this.path}/end`, { fruits });
      this.asking = false;
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }

  get path() {
    return `/api/tastings/${encodeURIComponent(this.name)}`;
  }
}

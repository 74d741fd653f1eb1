// <varieties-page></varieties-page> is every variety by type, the check first: three answers side by
// side, what they rest on, and what the grower decides. Nothing is ranked.
import { html, nothing } from 'lit';
import { ListElement } from '../lib/list-element.js';
import { me } from '../lib/me.js';
import { farmDay } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from './words.js';

const text = words.varieties;

export class VarietiesPage extends ListElement {
  static properties = {
    /** The variety that is being decided on: its key, or nothing. */
    open: { state: true },
  };

  path = '/api/varieties';
  list = 'varieties';
  size = 60;

  constructor() {
    super();
    this.open = null;
    new Watch(this, me);
  }

  shown(view) {
    if (view.varieties.length === 0) {
      return html`<p class="notice">${text.none}</p>`;
    }
    return html`${[...new Set(view.varieties.map((variety) => variety.cropName))].map(
      (cropName) =>
        html`<section class="type">
          <h2>${cropName}</h2>
          ${view.varieties
            .filter((variety) => variety.cropName === cropName)
            .map((variety) => this.#variety(variety))}
        </section>`,
    )}
    ${this.more(text.more)}`;
  }

  #variety(variety) {
    const { ripens, eats, keeps, isCheck, stillKeeping } = variety;
    return html`<article class="variety">
      <h3>${variety.variety}${isCheck ? html` <small>${text.check}</small>` : nothing}</h3>
      <dl>
        ${this.#answer(text.ripens, ripens)} ${this.#answer(text.eats, eats)}
        ${this.#answer(text.keeps, keeps)}
      </dl>
      ${this.#suggestion(variety.suggestion)} ${this.#beside(variety)}
      ${stillKeeping > 0 ? html`<p class="aside">${text.still(stillKeeping)}</p>` : nothing}
      ${this.#why(variety)} ${this.#decision(variety)}
    </article>`;
  }

  #answer(question, { answer }) {
    return html`<div>
      <dt>${question}</dt>
      <dd>${answer}</dd>
    </div>`;
  }

  #suggestion({ words: suggested, facts, change, how }) {
    return html`<div class="suggested">
      <p><strong>${text.suggested(suggested)}</strong></p>
      ${[...facts, change, how].filter(Boolean).map((sentence) => html`<p>${sentence}</p>`)}
    </div>`;
  }

  #beside({ besideCheck }) {
    return besideCheck.map((sentence) => html`<p>${sentence}</p>`);
  }

  #why({ ripens, eats, keeps, years, setApart }) {
    const parts = [
      [text.ripens, ripens.reasons],
      [text.eats, eats.reasons],
      [text.keeps, keeps.reasons],
      [text.years, years],
      [text.apart, setApart],
    ].filter(([, sentences]) => sentences.length > 0);
    return parts.length === 0
      ? nothing
      : html`<details>
          <summary>${text.why}</summary>
          ${parts.map(
            ([heading, sentences]) =>
              html`<h4>${heading}</h4>
                ${sentences.map((sentence) => html`<p>${sentence}</p>`)}`,
          )}
        </details>`;
  }

  #decision(variety) {
    const { decided } = variety;
    const key = `${variety.crop} ${variety.variety}`;
    return html`<div class="decided">
      <p>
        ${decided === null
          ? html`<span class="aside">${text.open}</span>`
          : html`<strong
              >${text.decided(
                [decided.words, decided.reason].filter(Boolean).join(', '),
                farmDay(decided.at, this.view.zone),
              )}</strong
            >`}
      </p>
      ${!me.isOwner
        ? nothing
        : this.open === key
          ? html`<decision-form
              .variety=${variety}
              @leave=${() => (this.open = null)}
              @decided=${({ detail }) => this.#decided(detail.varieties)}
            ></decision-form>`
          : html`<button
              type="button"
              aria-label="${text.decide}: ${variety.variety}"
              @click=${() => (this.open = key)}
            >
              ${text.decide}
            </button>`}
    </div>`;
  }

  #decided(news) {
    const isNew = (variety) =>
      news.find((each) => each.crop === variety.crop && each.variety === variety.variety);
    const varieties = this.view.varieties.map((variety) => isNew(variety) ?? variety);
    Object.assign(this, { view: { ...this.view, varieties }, open: null });
  }
}

// <lot-row .lot .zone .picking .picked> is one lot in the list: what to do with it first, then what
// and where it is. A link to the lot, or a tick while several are chosen; then it sends `pick`.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { count, share, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { expectedOf, nameOf, verdictOf } from './sentences.js';
import { words } from './words.js';

const text = words.lots;

export class LotRow extends PageElement {
  static properties = {
    lot: { attribute: false },
    zone: {},
    picking: { type: Boolean },
    picked: { type: Boolean },
  };

  constructor() {
    super();
    new Watch(this, units);
  }

  render() {
    const { lot, picking, picked } = this;
    return picking
      ? html`<label class="lot-row" data-picked=${picked}>
          <input
            type="checkbox"
            .checked=${picked}
            @change=${() => this.dispatchEvent(new Event('pick'))}
          />
          ${this.#body(lot)}
        </label>`
      : html`<a class="lot-row" href="/lot/${lot.code}">${this.#body(lot)}</a>`;
  }

  #body(lot) {
    const expected = lot.verdict === null ? '' : expectedOf(lot.verdict, this.zone);
    const cure = lot.cure !== null && lot.cure.endedAt === null ? lot.cure : null;
    return html`<span class="painted">${lot.code}</span>
      <span class="what"
        ><strong>${nameOf(lot)}</strong> ${lot.variety ? html`<i>${lot.cropName}</i>` : nothing}</span
      >
      <span class="verdict" data-state=${lot.verdict?.state ?? ''}>${verdictOf(lot)}</span>
      ${cure === null ? nothing : cureLine(cure.measured)}
      ${expected === '' ? nothing : html`<span class="expected">${expected}</span>`}
      <span class="aside"
        >${[
          lot.place,
          lot.fruits.sound > 0 ? text.left(count(lot.fruits.sound)) : '',
          ...Object.entries(lot.fruits.reserved).map(
            ([purpose, n]) => `${count(n)} ${words.lot.setAside(words.purposes[purpose] ?? purpose)}`,
          ),
          text.day(count(lot.sinceHarvestDays)),
        ]
          .filter(Boolean)
          .join(' · ')}</span
      >
      ${lot.waiting ? html`<span class="waits">${text.more(count(lot.waiting))}</span>` : nothing}`;
  }
}

/** How far a cure is, as a line that thickens. */
export const cureLine = (progress) =>
  html`<span class="cure"
    ><svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <path class="rest" d="M0 5H100" />
      <path class="done" d="M0 5H${Math.min(1, progress) * 100}" /></svg
    ><span>${text.cured(share(progress))}</span></span
  >`;

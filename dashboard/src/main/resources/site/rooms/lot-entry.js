// <lot-entry .lot></lot-entry> is one lot: what it is, how far its cure has come, and its account.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { count, hours, share } from '../lib/units.js';
import { words } from '../lib/words.js';

const text = words.lots;

export class LotEntry extends PageElement {
  static properties = { lot: { attribute: false } };

  render() {
    const { lot } = this;
    return html`<article class="lot">
      <header>
        <h3>${lot.variety} <span class="crop">${lot.cropName}</span></h3>
        <p class="code">${lot.code}</p>
      </header>
      <p class="sentence">${lot.sentence}</p>
      ${lot.cureProgress === null ? nothing : this.#cure(lot.cureProgress)}
      <p class="aside">
        ${[
          lot.place,
          text.left(count(lot.count)),
          lot.stage,
          text.sinceHarvest(lot.sinceHarvestDays, count(lot.sinceHarvestDays)),
        ].join(' · ')}
      </p>
      ${this.#account(lot)}
    </article>`;
  }

  #cure(progress) {
    return html`<p class="cure">
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <path class="rest" d="M0 5H100" />
        <path class="done" d="M0 5H${Math.min(1, progress) * 100}" />
      </svg>
      <span>${text.cured(share(progress))}</span>
    </p>`;
  }

  #account(lot) {
    const total = lot.inRangeHours + lot.outOfRangeHours + lot.unknownHours;
    const inside = total > 0 ? (lot.inRangeHours / total) * 100 : 0;
    const outside = total > 0 ? (lot.outOfRangeHours / total) * 100 : 0;
    return html`<details class="account">
      <summary>${text.inRange(hours(lot.inRangeHours), hours(total))}</summary>
      <svg class="account-line" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        <rect class="all" width="100" height="8" />
        <rect class="inside" width=${inside} height="8" />
        <rect class="outside" x=${inside} width=${outside} height="8" />
      </svg>
      <dl>
        ${row(text.certain, lot.certainInRangeHours, text.certainNote)}
        ${row(text.measured, lot.inRangeHours, text.measuredNote)}
        ${row(text.possible, lot.possibleInRangeHours, text.possibleNote)}
        ${row(text.outOfRange, lot.outOfRangeHours)}
        ${row(text.notMeasured, lot.unknownHours, text.notMeasuredNote)}
      </dl>
    </details>`;
  }
}

const row = (name, value, note) =>
  html`<div>
    <dt>${name}${note ? html`<small>${note}</small>` : nothing}</dt>
    <dd>${hours(value)}</dd>
  </div>`;

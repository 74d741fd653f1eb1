// <outbox-bar></outbox-bar> is what became of what was noted: the last entry with its one undo, what
// still waits on this phone, and what the shed did not take, with its sentence.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { ago, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { book } from './book.js';
import { outbox } from './outbox.js';
import { saidOf } from './sentences.js';
import { words } from './words.js';

const text = words.outbox;

export class OutboxBar extends PageElement {
  static properties = { full: { state: true } };

  constructor() {
    super();
    this.full = false;
    [outbox, units].forEach((source) => new Watch(this, source));
  }

  render() {
    const { refused, last, needsSignIn } = outbox;
    // What is going out right now stands in the box of what was said last, and in no other.
    const waiting = outbox.waiting.filter(({ key, state }) => state !== 'sending' || key !== last?.item.key);
    return html`${refused.length === 0
      ? nothing
      : html`<section class="outbox refused" role="alert" aria-labelledby="refused-heading">
          <h2 id="refused-heading">${text.refusedHeading(refused.length)}</h2>
          <ul>
            ${refused.map((item) => this.#refused(item))}
          </ul>
        </section>`}
    ${waiting.length === 0
      ? nothing
      : html`<section class="outbox" aria-labelledby="waiting-heading">
          <h2 id="waiting-heading" role="status">${text.heading(waiting.length)}</h2>
          <p>
            ${needsSignIn ? html`<a href="/you">${text.signIn}</a>` : text.why}
          </p>
          <ul>
            ${waiting.map((item) => this.#waiting(item))}
          </ul>
        </section>`}
    ${last === null || waiting.some(({ key }) => key === last.item.key) ? nothing : this.#last(last)}`;
  }

  #waiting(item) {
    return html`<li>
      <span>${sentence(item)}</span>
      <span class="aside"
        >${item.state === 'sending' ? text.sending : text.waiting},
        ${ago((Date.now() - item.enteredMs) / 1000)}</span
      >
      <button
        type="button"
        ?disabled=${item.state === 'sending'}
        aria-label="${text.drop}: ${sentence(item)}"
        @click=${() => outbox.drop(item.key)}
      >
        ${text.drop}
      </button>
    </li>`;
  }

  #refused(item) {
    return html`<li>
      <span>${sentence(item)}</span>
      <p class="problem">${item.sentence}</p>
      <p class="ways">
        <button type="button" @click=${() => outbox.drop(item.key)}>${text.drop}</button>
        ${item.isStale
          ? html`<button type="button" @click=${() => outbox.anyway(item.key)}>${text.anyway}</button>`
          : this.#again(item)}
      </p>
    </li>`;
  }

  #again(item) {
    return item.method !== 'POST' || item.kind === 'takenBack'
      ? nothing
      : html`<button type="button" @click=${() => this.#correct(item)}>${text.again}</button>`;
  }

  /** Opens the same question once more, with what was said already in it. */
  #correct(item) {
    this.dispatchEvent(new CustomEvent('again', { detail: item, bubbles: true }));
  }

  #last({ item, said }) {
    const isSending = outbox.items.some(({ key, state }) => key === item.key && state === 'sending');
    const warnings = said?.warnings ?? [];
    const canUndo = said === null || said.entries.length > 0;
    const isMisfit = item.kind === 'moved' && warnings.some((w) => /^\S+ {2}/.test(w));
    return html`<section class="undo" aria-label=${text.noted}>
      <p role="status">
        ${sentence(item)}${said === null && !isSending ? html`<small>${text.kept}</small>` : nothing}
      </p>
      ${warnings.map((warning) => html`<p class="warning">${told(warning)}</p>`)}
      <p class="ways">
        ${canUndo && item.kind !== 'takenBack'
          ? html`<button type="button" class="does" ?disabled=${isSending} @click=${() => outbox.undo()}>
              ${text.undo}
            </button>`
          : nothing}
        ${isMisfit
          ? html`<button type="button" @click=${() => this.#accept(item)}>${text.meant}</button>`
          : nothing}
        <button type="button" @click=${() => outbox.settle()}>${text.close}</button>
      </p>
    </section>`;
  }

  #accept({ lots, fields }) {
    const { place } = fields;
    outbox.say({ kind: 'misfit-accepted', lots, fields: { place }, seen: book.seen(lots) });
  }
}

const sentence = (item) => words.said.of(item.lots.join(', '), saidOf(item));

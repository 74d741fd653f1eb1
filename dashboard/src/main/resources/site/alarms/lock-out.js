// <lock-out .alarm .title> is what only somebody on the spot may do about an alarm: it asks for the
// code that stands on the board, and says after a while that it still stands where the code was wrong.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { standing } from './standing.js';
import { words } from './words.js';

const text = words.alarms;
/** Control looks at an answer with its next tick. */
const HEEDED_MS = 20_000;

export class LockOut extends PageElement {
  static properties = {
    alarm: { attribute: false },
    title: { attribute: false },
    busy: { state: true },
    refusal: { state: true },
    stands: { state: true },
  };

  #timer = 0;

  constructor() {
    super();
    this.busy = false;
    this.refusal = '';
    this.stands = false;
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  render() {
    const { alarm, title, busy } = this;
    return html`<form class="lock-out" @submit=${(event) => this.#send(event)}>
      <p>${text.lockedOut}</p>
      ${this.stands ? html`<p class="problem" role="alert">${text.stillLocked}</p>` : nothing}
      ${this.refusal === ''
        ? nothing
        : html`<p class="problem" role="alert"><strong>${text.refused}</strong> ${this.refusal}</p>`}
      <label>
        ${text.code}
        <input name="code" required inputmode="numeric" autocomplete="off" maxlength="20" aria-label="${text.code}: ${title}" />
      </label>
      <p class="ways">
        ${alarm.isOver
          ? html`<button class="does" value="reset" aria-label="${text.reset}: ${title}" ?disabled=${busy}>${text.reset}</button>`
          : nothing}
        <button value="out-of-service" aria-label="${text.repair}: ${title}" ?disabled=${busy}>${text.repair}</button>
      </p>
    </form>`;
  }

  async #send(event) {
    event.preventDefault();
    const { code } = event.target.elements;
    this.busy = true;
    this.refusal = '';
    this.stands = false;
    try {
      await standing.answer(this.alarm.key, event.submitter.value, null, code.value);
      code.value = '';
      this.#timer = setTimeout(() => (this.stands = true), HEEDED_MS);
    } catch (failure) {
      this.refusal = failure.detail || words.live.why[failure.kind];
    }
    this.busy = false;
  }
}

// <decision-form .variety> asks what becomes of a variety. Emits `decided` with all varieties as they
// stand then, or `leave`.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { sentence } from '../you/form.js';
import { words } from './words.js';

const text = words.varieties;

export class DecisionForm extends PageElement {
  static properties = {
    variety: { attribute: false },
    sending: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { sending: false, refusal: '' });
  }

  render() {
    return html`<form class="decision" @submit=${(event) => event.preventDefault()}>
      <label
        ><span>${text.reason}</span
        ><textarea
          name="reason"
          rows="2"
          maxlength="500"
          .value=${this.variety.decided?.reason ?? ''}
        ></textarea>
      </label>
      <div class="ways" role="group" aria-label=${text.of(this.variety.variety)}>
        ${Object.entries(text.decisions).map(
          ([decision, name]) =>
            html`<button type="button" ?disabled=${this.sending} @click=${() => this.#send(decision)}>
              ${name}
            </button>`,
        )}
        <button type="button" class="leave" @click=${() => this.dispatchEvent(new Event('leave'))}>
          ${text.leave}
        </button>
      </div>
      ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
    </form>`;
  }

  async #send(decision) {
    const { crop, variety } = this.variety;
    const reason = this.querySelector('[name=reason]').value;
    this.sending = true;
    try {
      const detail = await send('POST', '/api/varieties/decisions', { crop, variety, decision, reason });
      this.dispatchEvent(new CustomEvent('decided', { detail }));
    } catch (failure) {
      this.refusal = sentence(failure);
    } finally {
      this.sending = false;
    }
  }
}

// <own-tokens></own-tokens> lists the reader's sessions and API tokens, ends them and makes new ones.
import { html, nothing } from 'lit';
import { getJson, send } from '../lib/api.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { farmDate } from '../lib/units.js';
import { form, sentence } from './form.js';
import { words } from './words.js';

const text = words.you;

export class OwnTokens extends PageElement {
  static properties = {
    tokens: { state: true },
    made: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    this.tokens = [];
    this.made = null;
    this.refusal = '';
  }

  connectedCallback() {
    super.connectedCallback();
    this.#load();
  }

  render() {
    return html`<section class="parts" aria-labelledby="tokens-heading">
      <h2 id="tokens-heading">${text.devices}</h2>
      <ul>
        ${this.tokens.map(
          (token) =>
            html`<li>
              <p class="part">
                <span>${token.label}</span>
                ${token.isThis ? html`<strong>${text.thisDevice}</strong>` : nothing}
                <span class="where">${text.until(farmDate(token.expiresAt))}</span>
              </p>
              <p class="reason">
                ${text.may(text.roles[token.role])}${token.kind === 'api'
                  ? html` ${text.tokenName} <code>${token.id}</code>.`
                  : nothing}
              </p>
              ${token.isThis
                ? nothing
                : html`<p class="ways">
                    <button
                      type="button"
                      aria-label="${text.end}: ${token.label}"
                      @click=${() => this.#change('DELETE', `/api/tokens/${token.id}`)}
                    >
                      ${text.end}
                    </button>
                  </p>`}
            </li>`,
        )}
      </ul>
      ${this.made === null
        ? nothing
        : html`<p role="status" class="kept new-token">${text.tokenOnce} <code>${this.made.secret}</code></p>`}
      ${form({
        fields: [
          { name: 'label', label: text.tokenFor },
          { name: 'role', label: text.role, options: this.#roles() },
        ],
        button: text.makeToken,
        refusal: this.refusal,
        send: (values, form) => this.#make(values, form),
      })}
    </section>`;
  }

  /** No more than its maker may do, and the least first. */
  #roles() {
    const all = Object.entries(text.roles);
    const own = all.slice(all.findIndex(([role]) => role === me.view.role));
    return Object.fromEntries(own.reverse());
  }

  async #make(values, form) {
    this.made = await this.#change('POST', '/api/tokens', values);
    if (this.made !== null) {
      form.reset();
    }
  }

  async #change(method, path, body) {
    this.refusal = '';
    try {
      const answer = await send(method, path, body);
      await this.#load();
      return answer;
    } catch (failure) {
      this.refusal = sentence(failure);
      return null;
    }
  }

  async #load() {
    try {
      this.tokens = (await getJson('/api/tokens')).body;
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }
}

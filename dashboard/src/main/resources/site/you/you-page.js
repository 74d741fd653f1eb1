// <you-page></you-page> is where a person signs in, and sees what follows from being who they are.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { Watch } from '../lib/watch.js';
import { form, sentence } from './form.js';
import { words } from './words.js';

const text = words.you;

export class YouPage extends PageElement {
  static properties = { refusal: { state: true }, said: { state: true } };

  constructor() {
    super();
    this.refusal = '';
    this.said = '';
    [me, live].forEach((source) => new Watch(this, source));
  }

  render() {
    const { view } = me;
    if (view === null) {
      return me.failure === null ? html`<p role="status">${words.page.loading}</p>` : this.#unknown(me.failure);
    }
    if (view.name === null) {
      return html`<sign-in-form></sign-in-form>`;
    }
    return html`<p class="notice">${text.signedIn(view.name, text.roles[view.role])}</p>
      <p class="ways">
        <button type="button" @click=${() => me.signOut()}>${text.signOut}</button>
      </p>
      ${me.isOwner ? html`<farm-people></farm-people>` : nothing}
      <own-tokens></own-tokens>
      <section class="parts" aria-labelledby="password-heading">
        <h2 id="password-heading">${text.changePassword}</h2>
        ${form({
          fields: [
            {
              name: 'old',
              label: text.oldPassword,
              type: 'password',
              autocomplete: 'current-password',
            },
            {
              name: 'wanted',
              label: text.newPassword,
              note: text.passwordNote,
              type: 'password',
              autocomplete: 'new-password',
            },
          ],
          button: text.change,
          refusal: this.refusal,
          said: this.said,
          send: (values, form) => this.#change(values, form),
        })}
      </section>`;
  }

  #unknown({ kind, detail }) {
    return html`<p class="notice" role="alert">
      ${words.live.why[kind]} ${detail}
      <button type="button" @click=${() => me.load().catch(() => {})}>${words.live.tryNow}</button>
    </p>`;
  }

  async #change(values, form) {
    this.refusal = '';
    this.said = '';
    try {
      await send('PUT', '/api/me/password', values);
      this.said = text.changed;
      form.reset();
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }
}

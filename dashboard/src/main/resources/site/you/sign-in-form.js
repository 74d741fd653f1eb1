// <sign-in-form></sign-in-form> signs in, or makes the first owner while the farm has none.
import { html } from 'lit';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { form, sentence } from './form.js';
import { words } from './words.js';

const text = words.you;

export class SignInForm extends PageElement {
  static properties = { refusal: { state: true } };

  constructor() {
    super();
    this.refusal = '';
  }

  render() {
    const { needsOwner, openReading } = me.view;
    const name = { name: 'name', label: text.name, autocomplete: 'username' };
    return needsOwner
      ? html`<p>${text.setUpNote}</p>
          ${form({
            fields: [
              { name: 'code', label: text.code },
              name,
              {
                name: 'password',
                label: text.password,
                note: text.passwordNote,
                type: 'password',
                autocomplete: 'new-password',
              },
            ],
            button: text.setUp,
            refusal: this.refusal,
            send: (values) => this.#send('set-up', values),
          })}`
      : html`<p>${openReading ? text.signInNote : text.closedNote}</p>
          ${form({
            fields: [
              name,
              {
                name: 'password',
                label: text.password,
                type: 'password',
                autocomplete: 'current-password',
              },
            ],
            button: text.signIn,
            refusal: this.refusal,
            send: (values) => this.#send('sign-in', values),
          })}`;
  }

  async #send(how, values) {
    this.refusal = '';
    try {
      await me.begin(how, values);
      if (route.cameFrom !== null) {
        route.go(route.cameFrom, { replace: true });
      }
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }
}

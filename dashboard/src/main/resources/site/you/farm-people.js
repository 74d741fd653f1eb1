// <farm-people></farm-people> is for the owner: who may do what, and who changed what.
import { html, nothing } from 'lit';
import { getJson, send } from '../lib/api.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { moment } from '../lib/units.js';
import { form, sentence } from './form.js';
import { words } from './words.js';

const text = words.you;

export class FarmPeople extends PageElement {
  static properties = {
    people: { state: true },
    audit: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    this.people = [];
    this.audit = [];
    this.refusal = '';
  }

  connectedCallback() {
    super.connectedCallback();
    this.#load();
  }

  render() {
    return html`<section class="parts" aria-labelledby="people-heading">
        <h2 id="people-heading">${text.people}</h2>
        <ul>
          ${this.people.map(
            (person) =>
              html`<li>
                <p class="part"><span>${person.name}</span></p>
                <p class="reason">${text.may(text.roles[person.role])}</p>
                ${person.name === me.view.name
                  ? nothing
                  : html`<p class="ways">
                      <button
                        type="button"
                        aria-label="${text.remove}: ${person.name}"
                        @click=${() => this.#change('DELETE', person.name)}
                      >
                        ${text.remove}
                      </button>
                    </p>`}
              </li>`,
          )}
        </ul>
        ${form({
          fields: [
            { name: 'name', label: text.name },
            { name: 'role', label: text.role, options: reversed(text.roles) },
            {
              name: 'password',
              label: text.password,
              note: text.passwordNote,
              type: 'password',
              autocomplete: 'new-password',
            },
          ],
          button: text.keep,
          refusal: this.refusal,
          send: async ({ name, ...rest }, form) => {
            await this.#change('PUT', name, rest);
            if (this.refusal === '') {
              form.reset();
            }
          },
        })}
      </section>
      <section class="parts" aria-labelledby="audit-heading">
        <h2 id="audit-heading">${text.audit}</h2>
        <dl>
          ${this.audit.map(
            ({ at, who, what }) =>
              html`<div>
                <dt>${moment(at)}</dt>
                <dd>${who} ${what}</dd>
              </div>`,
          )}
        </dl>
      </section>`;
  }

  async #change(method, name, body) {
    this.refusal = '';
    try {
      await send(method, `/api/people/${encodeURIComponent(name)}`, body);
      await this.#load();
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }

  async #load() {
    try {
      const [people, audit] = await Promise.all([
        getJson('/api/people'),
        getJson('/api/audit?size=30'),
      ]);
      this.people = people.body;
      this.audit = audit.body;
    } catch (failure) {
      this.refusal = sentence(failure);
    }
  }
}

/** The least first: nobody should become an owner by a slip. */
const reversed = (roles) => Object.fromEntries(Object.entries(roles).reverse());

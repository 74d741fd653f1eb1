// A small form: labelled fields, one button, and under it what came of it.
import { html, nothing } from 'lit';
import { words } from '../lib/words.js';

/**
 * @param {{ fields: { name: string, label: string, note?: string, type?: string,
 *   autocomplete?: string, options?: Record<string, string> }[],
 *   button: string, refusal?: string, said?: string, send: (values: object) => void }} form
 */
export const form = ({ fields, button, refusal = '', said = '', send }) =>
  html`<form
    class="plain-form"
    @submit=${(event) => {
      event.preventDefault();
      send(Object.fromEntries(new FormData(event.target)), event.target);
    }}
  >
    ${fields.map(
      ({ name, label, note, type = 'text', autocomplete = 'off', options }) =>
        html`<label
          ><span>${label}${note ? html` <small>${note}</small>` : nothing}</span>
          ${options
            ? html`<select name=${name}>
                ${Object.entries(options).map(
                  ([value, shown]) => html`<option value=${value}>${shown}</option>`,
                )}
              </select>`
            : html`<input
                name=${name}
                type=${type}
                autocomplete=${autocomplete}
                autocapitalize="off"
                required
              />`}
        </label>`,
    )}
    <p class="ways"><button type="submit">${button}</button></p>
    ${refusal === '' ? nothing : html`<p class="problem" role="alert">${refusal}</p>`}
    ${said === '' ? nothing : html`<p role="status">${said}</p>`}
  </form>`;

/** What a failed request says to a person. */
export const sentence = (failure) => failure.detail || words.live.why[failure.kind];

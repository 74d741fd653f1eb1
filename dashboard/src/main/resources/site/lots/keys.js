// The parts of which questions are made: large keys for gloves, a stepper, a field for a few words.
import { html } from 'lit';
import { count } from '../lib/units.js';
import { words } from './words.js';

const text = words.say;

/** A question above its keys. */
export const asks = (question) => html`<p class="asks">${question}</p>`;

/** One large key for each value. */
export const keys = (values, label, choose) =>
  html`<p class="keys-of">
    ${values.map(
      (value) => html`<button type="button" @click=${() => choose(value)}>${label(value)}</button>`,
    )}
  </p>`;

/** One large key for each value, one of which is chosen. */
export const choices = (values, label, chosen, choose) =>
  html`<p class="keys-of choice-keys">
    ${values.map(
      (value) =>
        html`<button type="button" aria-pressed=${value === chosen} @click=${() => choose(value)}>
          ${label(value)}
        </button>`,
    )}
  </p>`;

/** How many, one more or one fewer. */
export const stepper = (sheet, most, least = 1) => {
  const n = sheet.draft.count;
  const step = (by) => sheet.think({ count: Math.min(most, Math.max(least, n + by)) });
  return html`<p class="stepper">
    <button type="button" aria-label=${text.fewer} ?disabled=${n <= least} @click=${() => step(-1)}>−</button>
    <output aria-live="polite">${count(n)}</output>
    <button type="button" aria-label=${text.moreOne} ?disabled=${n >= most} @click=${() => step(1)}>+</button>
  </p>`;
};

/** A few words in a field of the draft, and the key that notes them. */
export const writes = (sheet, name, label, done) =>
  html`<label class="written"
      ><span>${label}</span
      ><textarea
        name=${name}
        rows="2"
        maxlength="500"
        .value=${sheet.draft[name]}
        @input=${(event) => sheet.think({ [name]: event.target.value })}
      ></textarea></label
    >
    <p class="ways noting">
      <button type="button" class="does" @click=${done}>${text.noteIt}</button>
    </p>`;

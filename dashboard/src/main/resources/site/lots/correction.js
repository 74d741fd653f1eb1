// The question of an entry that was wrong: its own fields, as they stand, and when it happened.
import { html, nothing } from 'lit';
import { book } from './book.js';
import { words } from './words.js';

const text = words.say;
const LISTS = { cause: 'causes', purpose: 'purposes', grade: 'grades' };
const NUMBERS = ['count', 'weight_g', 'tare_g'];

export const correction = {
  begin: () => ({}),
  view: (sheet) => {
    const { entry } = sheet.asked;
    const known = Object.keys(entry.fields).filter((field) => field in text.field);
    return html`${known.map((field) => fieldOf(sheet, field))}
      <label class="written"
        ><span>${text.when}</span
        ><input
          type="datetime-local"
          name="at"
          .value=${sheet.fields.at ?? localOf(entry.at, book.view.zone)}
          @input=${({ target }) => sheet.answer({ at: target.value })}
      /></label>
      <p class="ways noting">
        <button type="button" class="does" @click=${() => note(sheet)}>${text.noteIt}</button>
        ${entry.kind === 'harvested' || Object.keys(sheet.fields).length > 0
          ? nothing
          : html`<button type="button" @click=${() => sheet.withdraw()}>${words.lot.takeBack}</button>`}
      </p>`;
  },
};

function fieldOf(sheet, field) {
  const value = sheet.fields[field] ?? sheet.asked.entry.fields[field];
  const answer = ({ target }) => sheet.answer({ [field]: target.value });
  const list = listOf(field, value);
  const label = text.field[field] + (field.endsWith('_g') ? ' (g)' : '');
  return html`<label class="written"
    ><span>${label}</span>${list
      ? html`<select name=${field} @change=${answer}>
          ${list.map(
            ([each, shown]) => html`<option value=${each} ?selected=${each === value}>${shown}</option>`,
          )}
        </select>`
      : html`<input
          name=${field}
          autocomplete="off"
          inputmode=${NUMBERS.includes(field) ? 'numeric' : 'text'}
          .value=${value}
          @input=${answer}
        />`}</label
  >`;
}

/** What may be chosen for a field, each with its words; nothing where anything may be written. */
function listOf(field, value) {
  if (field === 'crop') {
    const crops = book.view.crops.map(({ key, name }) => [key, name]);
    return crops.some(([key]) => key === value) ? crops : [[value, value], ...crops];
  }
  const list = LISTS[field];
  return list && book.view.words[list].map((each) => [each, words[list][each] ?? each]);
}

function note(sheet) {
  if (Object.keys(sheet.fields).length === 0) {
    sheet.close();
  } else {
    sheet.say(sheet.fields);
  }
}

/** A moment as the farm's clock shows it, in the form that a date field takes. */
const localOf = (instant, zone) =>
  new Date(instant).toLocaleString('sv-SE', { timeZone: zone }).replace(' ', 'T').slice(0, 16);

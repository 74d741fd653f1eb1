// The questions behind each thing that can be noted of a lot. Each begins with what is likely, and
// shows its keys; the last tap notes it.
import { html, nothing } from 'lit';
import { grams, massSign, typedGrams } from '../lib/units.js';
import { book } from './book.js';
import { correction } from './correction.js';
import { arrival } from './arrival.js';
import { asks, keys, stepper, writes } from './keys.js';
import { words } from './words.js';

const text = words.say;

const moved = {
  begin: () => ({ isOther: false, other: '' }),
  view: (sheet) => {
    const here = sheet.lot?.place;
    const places = book.view.places.filter((place) => place !== here);
    return html`${asks(text.where)}
      ${sheet.draft.isOther
        ? writes(sheet, 'other', text.name, () =>
            sheet.draft.other.trim() === ''
              ? sheet.miss('text')
              : sheet.say({ place: sheet.draft.other.trim() }),
          )
        : keys(places, (place) => place, (place) => sheet.say({ place }))}
      ${turn(sheet, text.elsewhere, text.knownPlace)}
      ${here === undefined ? nothing : html`<p class="aside">${here} (${text.here})</p>`}`;
  },
};

/**
 * To what nobody has said yet, which must be written once, or back to the keys. Never both at once: a
 * key would note its own word, and what was written would be lost.
 */
const turn = (sheet, other, known) =>
  html`<p class="ways">
    <button type="button" @click=${() => sheet.think({ isOther: !sheet.draft.isOther })}>
      ${sheet.draft.isOther ? known : other}
    </button>
  </p>`;

const CRATES = null;

const weighed = {
  /** Whoever says that it was the last one has weighed that too. */
  finish: (sheet) => (sheet.draft.figure === '' ? sheet.close() : noteWeight(sheet)),
  begin: ({ lot }) => ({
    figure: '',
    tare: '',
    isTare: false,
    tag: '',
    isNew: false,
    fruit: lot?.tags[0]?.fruit ?? CRATES,
  }),
  view: (sheet) => {
    const { draft, lot } = sheet;
    const tags = lot?.tags ?? [];
    const chosen = tags.find((tag) => tag.fruit === draft.fruit);
    const isCrates = draft.fruit === CRATES && !draft.isNew;
    return html`${asks(text.which)}
      <p class="keys-of choice-keys">
        ${tags.map(({ fruit }) => fruitKey(sheet, fruit, fruit))}
        <button
          type="button"
          aria-pressed=${draft.isNew}
          @click=${() => sheet.think({ isNew: true })}
        >
          ${text.newTag}
        </button>
        ${fruitKey(sheet, CRATES, text.crates)}
      </p>
      ${draft.isNew
        ? html`<label class="written"
            ><span>${text.tag}</span
            ><input
              name="tag"
              autocomplete="off"
              .value=${draft.tag}
              @input=${(event) => sheet.think({ tag: event.target.value })}
          /></label>`
        : nothing}
      ${chosen && !draft.isNew
        ? html`<p class="aside">${text.lastTime(grams(chosen.grams))}</p>`
        : nothing}
      ${isCrates
        ? html`<p class="choice-keys">
            ${[false, true].map(
              (isTare) =>
                html`<button
                  type="button"
                  aria-pressed=${draft.isTare === isTare}
                  @click=${() => sheet.think({ isTare })}
                >
                  ${isTare ? text.tare : text.shows}
                </button>`,
            )}
          </p>`
        : nothing}
      <number-pad
        decimal
        .label=${draft.isTare && isCrates ? text.tare : text.shows}
        .unit=${massSign()}
        .value=${draft.isTare && isCrates ? draft.tare : draft.figure}
        @input=${({ target }) =>
          sheet.think(draft.isTare && isCrates ? { tare: target.value } : { figure: target.value })}
      ></number-pad>
      <p class="ways noting">
        <button type="button" class="does" @click=${() => noteWeight(sheet, isCrates ? {} : NEXT)}>
          ${isCrates ? text.noteIt : text.next}
        </button>
      </p>`;
  },
};

const fruitKey = (sheet, fruit, label) =>
  html`<button
    type="button"
    aria-pressed=${sheet.draft.fruit === fruit && !sheet.draft.isNew}
    @click=${() => sheet.think({ fruit, isNew: false })}
  >
    ${label}
  </button>`;

/** After this one comes another. */
const NEXT = { isNext: true };

function noteWeight(sheet, { isNext = false } = {}) {
  const { draft, lot } = sheet;
  const fruit = draft.isNew ? draft.tag.trim() : draft.fruit;
  const weight = typedGrams(draft.figure);
  if (!(weight > 0)) {
    sheet.miss('number');
  } else if (fruit === '') {
    sheet.miss('text');
  } else if (fruit === CRATES) {
    const tare = draft.tare === '' ? 0 : typedGrams(draft.tare);
    const on = String(lot?.fruits.sound ?? 1);
    sheet.say({ count: on, weight_g: String(weight), tare_g: String(tare) });
  } else {
    const said = words.said.weighed({ fruit, weight_g: weight }, grams);
    sheet.say({ fruit, weight_g: String(weight) }, isNext ? { next: said } : {});
  }
}

const culled = {
  begin: (sheet) => ({ count: countOf(sheet, 1) }),
  view: (sheet) =>
    html`${asks(text.howMany)} ${stepper(sheet, most(sheet))} ${asks(text.whyLost)}
    ${keys(
      book.view.words.causes,
      (cause) => words.causes[cause] ?? cause,
      (cause) => sheet.say({ count: String(sheet.draft.count), cause }),
    )}`,
};

const used = {
  begin: (sheet) => ({ count: countOf(sheet, 1) }),
  view: (sheet) =>
    html`${asks(text.howMany)} ${stepper(sheet, most(sheet))} ${asks(text.whatFor)}
    ${keys(
      book.view.words.purposes,
      (purpose) => words.purposes[purpose] ?? purpose,
      (purpose) => sheet.say({ count: String(sheet.draft.count), purpose }),
    )}`,
};

const reserved = {
  begin: (sheet) => ({ count: countOf(sheet, 3) }),
  view: (sheet) =>
    html`${asks(text.howMany)} ${stepper(sheet, most(sheet), 0)} ${asks(text.whatFor)}
    ${keys(
      book.view.words.purposes.filter((purpose) => purpose !== 'kitchen' && purpose !== 'sold'),
      (purpose) => words.purposes[purpose] ?? purpose,
      (purpose) => sheet.say({ count: String(sheet.draft.count), purpose }),
    )}`,
};

const recounted = {
  begin: ({ fields }) => ({ figure: fields.count ?? '' }),
  view: (sheet) =>
    html`<number-pad
        .label=${text.counted}
        .value=${sheet.draft.figure}
        @input=${({ target }) => sheet.think({ figure: target.value })}
      ></number-pad>
      <p class="ways noting">
        <button
          type="button"
          class="does"
          @click=${() =>
            sheet.draft.figure === ''
              ? sheet.miss('number')
              : sheet.say({ count: String(Number(sheet.draft.figure)) })}
        >
          ${text.noteIt}
        </button>
      </p>`,
};

const noted = {
  begin: ({ fields }) => ({ note: fields.note ?? '' }),
  view: (sheet) => writes(sheet, 'note', text.text, () => noteText(sheet)),
};

const attested = {
  begin: () => ({ isOther: false, note: '' }),
  view: (sheet) =>
    html`${asks(text.seen)}
    ${sheet.draft.isOther
      ? writes(sheet, 'note', text.text, () => noteText(sheet))
      : keys(text.attested, (seen) => seen, (note) => sheet.say({ note }))}
    ${turn(sheet, text.something, text.knownSign)}`,
};

const unfit = {
  begin: () => ({}),
  view: (sheet) =>
    html`${asks(text.unfitHow)}
    ${keys(Object.keys(words.harms), (harm) => words.harms[harm], (found) => sheet.say({ found }))}`,
};

const lifted = {
  begin: ({ fields }) => ({ note: fields.note ?? '' }),
  view: (sheet) =>
    html`${asks(text.liftWhy)} ${writes(sheet, 'note', text.text, () => noteText(sheet))}`,
};

const noteText = (sheet) =>
  sheet.draft.note.trim() === '' ? sheet.miss('text') : sheet.say({ note: sheet.draft.note.trim() });

/** What was said before, as far as there are so many. */
const countOf = (sheet, usual) => Math.min(most(sheet), Number(sheet.fields.count ?? usual));

const most = (sheet) => Math.max(1, sheet.lot?.fruits.sound ?? 1);

/** By the kind of entry that comes of it. */
export const QUESTIONS = {
  moved,
  weighed,
  culled,
  used,
  reserved,
  recounted,
  noted,
  attested,
  'kitchen-taste': unfit,
  'harm-lifted': lifted,
  harvested: arrival,
  corrected: correction,
};

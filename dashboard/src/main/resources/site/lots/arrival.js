// The question of harvest night: what came in, how many, where to, and with the last tap how ripe.
import { html, nothing } from 'lit';
import { book } from './book.js';
import { asks, choices, keys } from './keys.js';
import { outbox } from './outbox.js';
import { words } from './words.js';

const text = words.say;

export const arrival = {
  begin: ({ asked, fields }) => {
    const plan = book.view.planned.find(({ code }) => code === asked.lots[0]);
    const known = knownOf(fields) ?? plan ?? null;
    return {
      plan: plan?.code ?? '',
      known,
      isNew: known === null && cameBefore().length === 0,
      crop: fields.crop ?? '',
      variety: fields.variety ?? '',
      figure: fields.count ?? '',
      place: fields.place ?? book.view.places[0] ?? '',
      isOther: false,
      other: '',
    };
  },
  view: (sheet) =>
    html`${sheet.asked.lots.length === 0 ? what(sheet) : nothing}
      <p class="code-to-paint">${text.code} <strong>${codeOf(sheet)}</strong></p>
      <number-pad
        .label=${text.howMany}
        .value=${sheet.draft.figure}
        @input=${({ target }) => sheet.think({ figure: target.value })}
      ></number-pad>
      ${asks(text.where)}
      ${choices(
        placesOf(sheet),
        (place) => place,
        sheet.draft.isOther ? '' : sheet.draft.place,
        (place) => sheet.think({ place, isOther: false }),
      )}
      ${elsewhere(sheet)} ${asks(text.grade)}
      ${keys(book.view.words.grades, (grade) => words.grades[grade], (grade) => note(sheet, grade))}`,
};

/** A place of which nobody has spoken yet is written once; what stands there is the answer. */
const elsewhere = (sheet) =>
  sheet.draft.isOther
    ? html`<label class="written"
        ><span>${text.name}</span
        ><input
          name="other"
          autocomplete="off"
          maxlength="60"
          .value=${sheet.draft.other}
          @input=${({ target }) => sheet.think({ other: target.value })}
      /></label>`
    : html`<p class="ways">
        <button type="button" @click=${() => sheet.think({ isOther: true })}>${text.elsewhere}</button>
      </p>`;

/** What may come in without a word being written: every plan, every variety that was here before. */
function cameBefore() {
  const plans = book.view.planned.map((plan) => ['plan', plan]);
  const varieties = new Map(book.view.lots.map((lot) => [`${lot.crop} ${lot.variety}`, lot]));
  return [...plans, ...[...varieties.values()].map((lot) => ['lot', lot])];
}

/** Asks for one of these, or for a new one, which is written once. */
function what(sheet) {
  const { draft } = sheet;
  const all = cameBefore();
  if (all.length === 0) {
    return newOne(sheet);
  }
  return html`<label class="written"
      ><span>${text.plan}</span
      ><select
        name="what"
        @change=${({ target }) => choose(sheet, all[Number(target.value)], target.value === 'new')}
      >
        <option value="">…</option>
        ${all.map(
          ([kind, each], i) =>
            html`<option value=${i} ?selected=${draft.known === each}>
              ${[kind === 'plan' ? each.code : '', each.variety, each.cropName]
                .filter(Boolean)
                .join(' · ')}
            </option>`,
        )}
        <option value="new" ?selected=${draft.isNew}>${text.varietyNew}</option>
      </select></label
    >
    ${draft.isNew ? newOne(sheet) : nothing}`;
}

const newOne = (sheet) =>
  html`<label class="written"
      ><span>${words.lots.crop}</span
      ><select name="crop" @change=${({ target }) => sheet.think({ crop: target.value })}>
        <option value="">…</option>
        ${book.view.crops.map(
          ({ key, name }) =>
            html`<option value=${key} ?selected=${key === sheet.draft.crop}>${name}</option>`,
        )}
      </select></label
    >
    <label class="written"
      ><span>${text.varietyName}</span
      ><input
        name="variety"
        autocomplete="off"
        .value=${sheet.draft.variety}
        @input=${({ target }) => sheet.think({ variety: target.value })}
    /></label>`;

function choose(sheet, chosen, isNew) {
  const [kind, known] = chosen ?? ['', null];
  sheet.think({ isNew, known, plan: kind === 'plan' ? known.code : '' });
}

function note(sheet, grade) {
  const { draft } = sheet;
  const { crop = '', variety = '' } = draft.isNew ? draft : (draft.known ?? {});
  const place = draft.isOther ? draft.other.trim() : draft.place;
  if (crop === '') {
    sheet.miss('choice');
  } else if (!(Number(draft.figure) > 0)) {
    sheet.miss('number');
  } else if (place === '') {
    sheet.miss('text');
  } else {
    const fields = { crop, variety, count: String(Number(draft.figure)), place, grade };
    sheet.say(fields, { lots: [codeOf(sheet)] });
  }
}

/** The plan's code, or the next one that is free, to be painted on the crate. */
const codeOf = ({ asked, draft }) => asked.lots[0] ?? (draft.plan || freeCode());

/** Codes that wait on this phone are taken already. */
const freeCode = () => {
  const taken = new Set(outbox.items.flatMap(({ lots }) => lots));
  return book.view.freeCodes.find((code) => !taken.has(code)) ?? '';
};

const knownOf = ({ crop, variety }) =>
  crop === undefined ? null : book.view.lots.find((lot) => lot.crop === crop && lot.variety === variety);

const placesOf = ({ draft }) =>
  [...new Set([...book.view.places, draft.place])].filter((place) => place !== '');

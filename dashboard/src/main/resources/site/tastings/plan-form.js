// <plan-form></plan-form> asks what is compared and who tastes. Emits `planned` with the name of the
// tasting, or `leave`.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { temperatureSign, typedC, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { book } from '../lots/book.js';
import { nameOf } from '../lots/sentences.js';
import { sentence } from '../you/form.js';
import { words } from './words.js';

const text = words.plan;
const USUAL_CUPS = 6;

/** Lots whose cups can say something come first; those of no known type come last. */
const SPEAKING = ['much', 'unsure', 'nothing', undefined];

const TEXTS = ['method', 'cut', 'doneWhen', 'part'];

export class PlanForm extends PageElement {
  static properties = {
    chosen: { state: true },
    /** Which fruits of a lot are cut, as they were typed. */
    cut: { state: true },
    refusal: { state: true },
    sending: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { chosen: [], cut: {}, refusal: '', sending: false });
    [book, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    book.load();
  }

  render() {
    const lots = book.lots
      .filter((lot) => lot.fruits.sound > 0)
      .sort((a, b) => SPEAKING.indexOf(a.cups?.says) - SPEAKING.indexOf(b.cups?.says));
    return html`<form class="plan" @submit=${this.#send}>
      ${this.#input('name', text.name, { required: true, maxlength: 60 })}
      <fieldset>
        <legend>${text.lots}</legend>
        ${lots.length === 0 ? html`<p class="aside">${text.noLots}</p>` : nothing}
        <div class="lots-to-taste">
          ${lots.map(
            (lot) =>
              html`<label
                ><input
                  type="checkbox"
                  name="lot"
                  value=${lot.code}
                  @change=${(event) => this.#choose(lot.code, event.target.checked)}
                /><span
                  ><strong>${lot.code}</strong> ${nameOf(lot)}
                  <small>${lot.verdict?.words ?? nothing}</small>
                  <small data-says=${lot.cups?.says ?? nothing}>${lot.cups?.words ?? nothing}</small></span
                ></label
              >`,
          )}
        </div>
      </fieldset>
      ${this.chosen.length === 0 ? nothing : this.#fruits()}
      <label
        ><span>${text.tasters} <small>${text.tastersWhy}</small></span
        ><textarea name="tasters" rows="4" required></textarea>
      </label>
      <details>
        <summary>${text.finer}</summary>
        ${this.#choice('twice', text.twice, text.twiceWhy)}
        ${this.#input('cups', text.cups, { type: 'number', min: 3, max: 8, value: USUAL_CUPS })}
        ${this.#choice('check', text.check, text.checkWhy)}
        <label
          ><span>${text.blinding}</span
          ><select name="blinding">
            ${Object.entries(text.blindings).map(
              ([word, label]) => html`<option value=${word}>${label}</option>`,
            )}
          </select></label
        >
        <label
          ><span>${text.main} <small>${text.mainWhy}</small></span
          ><select name="main">
            ${Object.entries(text.mains).map(
              ([key, label]) => html`<option value=${key}>${label}</option>`,
            )}
          </select></label
        >
        ${this.#input('warmUp', text.warmUp)}
      </details>
      <details>
        <summary>${text.kitchen}</summary>
        ${this.#input('method', text.method)}
        ${this.#input('heat', text.heat(temperatureSign()), { type: 'number', min: 0, max: 750 })}
        ${this.#input('cut', text.cut)} ${this.#input('doneWhen', text.doneWhen)}
        ${this.#input('served', text.served(temperatureSign()), { type: 'number', min: 0, max: 212 })}
        ${this.#input('part', text.part)}
      </details>
      ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
      <p class="ways">
        <button type="submit" class="does" ?disabled=${this.sending}>${text.send}</button>
        <button type="button" @click=${() => this.dispatchEvent(new Event('leave'))}>
          ${text.leave}
        </button>
      </p>
    </form>`;
  }

  #input(name, label, { type = 'text', required = false, min, max, maxlength = 200, value = '' } = {}) {
    return html`<label
      ><span>${label}</span
      ><input
        name=${name}
        type=${type}
        autocomplete="off"
        ?required=${required}
        min=${min ?? nothing}
        max=${max ?? nothing}
        maxlength=${type === 'text' ? maxlength : nothing}
        value=${value}
    /></label>`;
  }

  #choice(name, label, why) {
    return html`<label
      ><span>${label} <small>${why}</small></span
      ><select name=${name}>
        <option value="">${text.none}</option>
        ${this.#samples().map(({ name }) => html`<option value=${name}>${name}</option>`)}
      </select></label
    >`;
  }

  /** Which fruits of each chosen lot are cut. */
  #fruits() {
    return html`<fieldset>
      <legend>${text.fruits} <small>${text.fruitsWhy}</small></legend>
      ${this.chosen.map(
        (code) =>
          html`<label
            ><span>${code}</span
            ><input
              name="fruits"
              autocomplete="off"
              .value=${this.cut[code] ?? '1'}
              @input=${(event) => (this.cut = { ...this.cut, [code]: event.target.value })}
          /></label>`,
      )}
    </fieldset>`;
  }

  /** The samples as they are sent, each with the name that it gets. */
  #samples() {
    return this.chosen.flatMap((lot) =>
      (this.cut[lot] ?? '1')
        .split(',')
        .map((part) => part.split('+').map((fruit) => fruit.trim()).filter(Boolean))
        .filter((fruits) => fruits.length > 0)
        .map((fruits) =>
          fruits.length === 1 && fruits[0] === '1'
            ? { name: lot, lot, fruits: null }
            : { name: `${lot}:${fruits.join('+')}`, lot, fruits },
        ),
    );
  }

  #choose(code, isChosen) {
    this.chosen = isChosen
      ? [...this.chosen, code]
      : this.chosen.filter((other) => other !== code);
  }

  #send = async (event) => {
    event.preventDefault();
    const values = Object.fromEntries(new FormData(event.target));
    const tasters = values.tasters.split(/[\n,;]/).map((name) => name.trim()).filter(Boolean);
    const samples = this.#samples();
    if (samples.length < 2 || tasters.length === 0) {
      this.refusal = text.tooFew;
      return;
    }
    this.sending = true;
    try {
      const { tasting } = await send('POST', '/api/tastings', {
        name: values.name,
        samples: samples.map(({ lot, fruits }) => ({ lot, fruits })),
        tasters,
        twice: values.twice || null,
        check: values.check || null,
        warmUp: values.warmUp || null,
        cups: whole(values.cups),
        main: values.main,
        blinding: values.blinding,
        temperatureC: exactC(values.heat),
        servedAtC: exactC(values.served),
        ...Object.fromEntries(TEXTS.map((name) => [name, values[name] || null])),
      });
      this.dispatchEvent(new CustomEvent('planned', { detail: tasting.name }));
    } catch (failure) {
      this.refusal = sentence(failure);
    } finally {
      this.sending = false;
    }
  };
}

const whole = (typed) => (typed === '' ? null : Math.round(Number(typed)));

/** As exact as it was typed: what is no whole degree there is none here. */
const exactC = (typed) => (typed === '' ? null : Math.round(typedC(typed) * 1000) / 1000);

// <plan-form></plan-form> asks what is compared and who tastes. Emits `planned` with the name of the
// tasting, or `leave`.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';
import { book } from '../lots/book.js';
import { nameOf } from '../lots/sentences.js';
import { sentence } from '../you/form.js';

const text = words.plan;
const USUAL_CUPS = 6;
const TEXTS = ['method', 'cut', 'doneWhen', 'part'];

export class PlanForm extends PageElement {
  static properties = {
    chosen: { state: true },
    refusal: { state: true },
    sending: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { chosen: [], refusal: '', sending: false });
    new Watch(this, book);
  }

  connectedCallback() {
    super.connectedCallback();
    book.load();
  }

  render() {
    const lots = book.lots.filter((lot) => lot.fruits.sound > 0);
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
                /><span><strong>${lot.code}</strong> ${nameOf(lot)}</span></label
              >`,
          )}
        </div>
      </fieldset>
      <label
        ><span>${text.tasters} <small>${text.tastersWhy}</small></span
        ><textarea name="tasters" rows="4" required></textarea>
      </label>
      ${this.#choice('twice', text.twice, text.twiceWhy)}
      ${this.#choice('check', text.check, text.checkWhy)}
      ${this.#input('warmUp', text.warmUp)}
      ${this.#input('cups', text.cups, { type: 'number', min: 3, max: 8, value: USUAL_CUPS })}
      <details>
        <summary>${text.kitchen}</summary>
        ${this.#input('method', text.method)}
        ${this.#input('temperatureC', text.temperatureC, { type: 'number', min: 0, max: 400 })}
        ${this.#input('cut', text.cut)} ${this.#input('doneWhen', text.doneWhen)}
        ${this.#input('servedAtC', text.servedAtC, { type: 'number', min: 0, max: 100 })}
        ${this.#input('part', text.part)}
      </details>
      <p class="aside">${text.rest}</p>
      ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
      <p class="ways">
        <button type="submit" ?disabled=${this.sending}>${text.send}</button>
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
        ${this.chosen.map((code) => html`<option value=${code}>${code}</option>`)}
      </select></label
    >`;
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
    if (this.chosen.length < 2 || tasters.length === 0) {
      this.refusal = text.tooFew;
      return;
    }
    this.sending = true;
    try {
      const { tasting } = await send('POST', '/api/tastings', {
        name: values.name,
        samples: this.chosen.map((lot) => ({ lot })),
        tasters,
        twice: values.twice || null,
        check: values.check || null,
        warmUp: values.warmUp || null,
        cups: whole(values.cups),
        temperatureC: whole(values.temperatureC),
        servedAtC: whole(values.servedAtC),
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

const whole = (typed) => (typed === '' ? null : Number(typed));

// <cook-form name .sample .fruit> notes what was seen of a fruit as it was cut and cooked. Emits `noted`
// with the kitchen as it stands then, or `leave`.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { massSign, typedGrams, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { sentence } from '../you/form.js';
import { words } from './words.js';

const text = words.cook;
const SEEDS = ['', 'full', 'flat'];
const HARMS = ['bitter', 'green', 'mould'];

export class CookForm extends PageElement {
  static properties = {
    name: {},
    sample: { attribute: false },
    fruit: { attribute: false },
    refusal: { state: true },
    sending: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { name: '', sample: '', fruit: '', refusal: '', sending: false });
    new Watch(this, units);
  }

  render() {
    const figure = (name, label, { max, step = 1 }) =>
      html`<label
        ><span>${label}</span
        ><input name=${name} type="number" inputmode="decimal" min="0" max=${max} step=${step}
      /></label>`;
    const tick = (name) =>
      html`<label class="tick"><input type="checkbox" name=${name} /> ${text[name]}</label>`;
    return html`<form class="plan cook" aria-label=${text.of(this.sample, this.fruit)} @submit=${this.#send}>
      ${figure('minutes', text.minutes, { max: 600 })}
      ${figure('weight', text.weight(massSign()), { max: 200, step: 0.01 })}
      ${figure('fleshMm', text.fleshMm, { max: 300 })}
      <label
        ><span>${text.seeds}</span
        ><select name="seeds">
          ${SEEDS.map((word) => html`<option value=${word}>${text.seed[word]}</option>`)}
        </select></label
      >
      <label><span>${text.doneness}</span><input name="doneness" maxlength="200" autocomplete="off" /></label>
      ${tick('freeLiquid')} ${tick('rotInside')} ${HARMS.map(tick)}
      ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
      <p class="ways">
        <button type="submit" ?disabled=${this.sending}>${text.note}</button>
        <button type="button" @click=${() => this.dispatchEvent(new Event('leave'))}>${text.leave}</button>
      </p>
    </form>`;
  }

  #send = async (event) => {
    event.preventDefault();
    const typed = Object.fromEntries(new FormData(event.target));
    const whole = (figure) => (figure === '' ? null : Math.round(Number(figure)));
    this.sending = true;
    try {
      const detail = await send('POST', `/api/tastings/${encodeURIComponent(this.name)}/cooked`, {
        sample: this.sample,
        fruit: this.fruit,
        minutes: whole(typed.minutes),
        weightGrams: typed.weight === '' ? null : typedGrams(typed.weight),
        fleshMm: whole(typed.fleshMm),
        seeds: typed.seeds || null,
        doneness: typed.doneness || null,
        freeLiquid: 'freeLiquid' in typed,
        rotInside: 'rotInside' in typed,
        found: HARMS.filter((harm) => harm in typed),
      });
      this.dispatchEvent(new CustomEvent('noted', { detail }));
    } catch (failure) {
      this.refusal = sentence(failure);
    } finally {
      this.sending = false;
    }
  };
}

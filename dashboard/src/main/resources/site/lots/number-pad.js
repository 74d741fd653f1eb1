// <number-pad .value .decimal .label .unit> is a pad of large keys for gloves; the keyboard types too.
// Sends `input` with the figure as text, with a point whatever the locale.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { decimalSign, typedFigure } from '../lib/units.js';
import { words } from './words.js';

const LONGEST = 7;

export class NumberPad extends PageElement {
  static properties = {
    value: {},
    decimal: { type: Boolean },
    label: {},
    unit: {},
  };

  constructor() {
    super();
    Object.assign(this, { value: '', decimal: false, label: '', unit: '' });
  }

  render() {
    const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];
    return html`<label class="typed"
        ><span>${this.label}</span>
        <input
          inputmode="none"
          autocomplete="off"
          name="figure"
          .value=${typedFigure(this.value)}
          @input=${(event) => this.#typed(event.target)}
        />
        ${this.unit ? html`<span class="unit">${this.unit}</span>` : nothing}</label
      >
      <div class="keys">
        ${keys.map((key) => this.#key(key))}
        ${this.decimal ? this.#key('.') : html`<span></span>`} ${this.#key('0')}
        <button type="button" aria-label=${words.say.erase} @click=${() => this.#say(this.value.slice(0, -1))}>
          ⌫
        </button>
      </div>`;
  }

  #key(key) {
    return html`<button type="button" @click=${() => this.#say(this.value + key)}>
      ${key === '.' ? decimalSign() : key}
    </button>`;
  }

  #typed(input) {
    this.#say(input.value.replace(',', '.').replace(decimalSign(), '.'));
    input.value = typedFigure(this.value);
  }

  #say(value) {
    const form = this.decimal ? /^\d*\.?\d*$/ : /^\d*$/;
    if (form.test(value) && value.length <= LONGEST) {
      this.value = value;
      this.dispatchEvent(new Event('input'));
    }
  }
}

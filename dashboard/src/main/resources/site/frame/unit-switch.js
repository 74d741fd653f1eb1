// <unit-switch></unit-switch> lets the reader choose degrees and weights, once for this device.
import { html } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';

export class UnitSwitch extends PageElement {
  constructor() {
    super();
    new Watch(this, units);
  }

  render() {
    return html`${this.#choice('temperature', [
      ['C', '°C'],
      ['F', '°F'],
    ])}
    ${this.#choice('mass', [
      ['kg', 'kg'],
      ['lb', 'lb'],
    ])}`;
  }

  #choice(quantity, options) {
    return html`<fieldset class="unit-choice">
      <legend>${words.units[quantity]}</legend>
      ${options.map(
        ([value, sign]) =>
          html`<label>
            <input
              type="radio"
              name=${quantity}
              .checked=${units[quantity] === value}
              @change=${() => units.choose({ [quantity]: value })}
            />
            <span>${sign}</span>
          </label>`,
      )}
    </fieldset>`;
  }
}

// <dot-plot .question .means .names> lays every sample on the scale of one question: a dot for its
// mean, a line for the range of the mean, the best first.
import { html, nothing, svg } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { figure } from '../lib/units.js';
import { words } from './words.js';

const text = words.tastings;
const WIDTH = 480;
const HEIGHT = 24;
const EDGE = 10;

export class DotPlot extends PageElement {
  static properties = {
    question: { attribute: false },
    means: { attribute: false },
    names: { attribute: false },
  };

  render() {
    const { low, high, lowWords, highWords } = this.question;
    const rows = [...this.means].sort((a, b) => b.mean - a.mean);
    return html`<ol class="dots">
        ${rows.map((row) => this.#row(row))}
      </ol>
      <p class="ends"><span>${low} ${lowWords}</span><span>${highWords} ${high}</span></p>`;
  }

  #row({ sample, mean, low, high }) {
    const y = HEIGHT / 2;
    const steps = Array.from(
      { length: this.question.high - this.question.low + 1 },
      (_, step) => this.question.low + step,
    );
    return html`<li>
      <span class="what">${this.names.get(sample) ?? sample}</span>
      <span class="figures">${text.mean(this.#figure(mean), this.#figure(low), this.#figure(high))}</span>
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" aria-hidden="true">
        <path class="scale" d="M${EDGE} ${y}H${WIDTH - EDGE}" />
        ${steps.map((step) => svg`<path class="scale" d="M${this.#x(step)} ${y - 4}v8" />`)}
        ${low === null || high === null
          ? nothing
          : svg`<path class="range" d="M${this.#x(low)} ${y}H${this.#x(high)}" />`}
        <circle cx=${this.#x(mean)} cy=${y} r="7" />
      </svg>
    </li>`;
  }

  #x(value) {
    const { low, high } = this.question;
    const part = (this.#within(value) - low) / (high - low);
    return EDGE + part * (WIDTH - 2 * EDGE);
  }

  #figure(value) {
    return value === null ? null : figure(Math.round(this.#within(value) * 10) / 10);
  }

  /** A range may reach beyond the scale; what is shown does not. */
  #within(value) {
    const { low, high } = this.question;
    return Math.min(high, Math.max(low, value));
  }
}

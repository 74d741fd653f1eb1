// The keys under a cup's further questions: one row a question, and one key a use.
import { html, nothing } from 'lit';
import { words } from './words.js';

const YES_NO = 2;

/** What stands at either end is written there already. */
const isBetween = (step, steps) => step > 0 && step < steps.length - 1;

/** @param {(value: number) => void} choose gets the score that was tapped */
export function scaleKeys({ key, question, lowest, words: steps }, answer, choose) {
  const isYesNo = steps.length === YES_NO;
  return html`<div class="steps" role="group" aria-labelledby="of-${key}">
    <p id="of-${key}">${question}</p>
    <div class="keys-in-row">
      ${steps.map((word, step) => {
        const value = lowest + step;
        return html`<button
          type="button"
          aria-label=${isYesNo ? word : `${value} ${word}`}
          aria-pressed=${answer === value}
          @click=${() => choose(value)}
        >
          ${isYesNo ? word : value}
        </button>`;
      })}
    </div>
    ${isYesNo
      ? nothing
      : html`<p class="ends aside">
          <span>${steps[0]}</span><span>${isBetween(answer - lowest, steps) ? steps[answer - lowest] : nothing}</span
          ><span>${steps[steps.length - 1]}</span>
        </p>`}
  </div>`;
}

/** @param {(use: string) => void} tick gets the use that was tapped */
export const useKeys = (uses, ticked, tick) =>
  html`<div class="steps" role="group" aria-labelledby="of-uses">
    <p id="of-uses">${words.taste.goodFor}</p>
    <div class="keys-in-row wide">
      ${uses.map(
        ({ key, words: name }) =>
          html`<button type="button" aria-pressed=${ticked.includes(key)} @click=${() => tick(key)}>
            ${name}
          </button>`,
      )}
    </div>
  </div>`;

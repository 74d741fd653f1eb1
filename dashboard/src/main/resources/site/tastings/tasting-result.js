// <tasting-result .result> is what a closed tasting says: what was in the cups, then question by
// question where each sample lies, and in words what may be concluded from it.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { words } from './words.js';

const text = words.tastings;
const FIRST = 'main';

export class TastingResult extends PageElement {
  static properties = { result: { attribute: false } };

  render() {
    const { samples, questions, acrossGoes } = this.result;
    const first = questions.filter(({ standing }) => standing === FIRST);
    const others = questions.filter(({ standing }) => standing !== FIRST);
    return html`${first.map((question) => this.#question(question))}
      ${acrossGoes.length === 0
        ? nothing
        : html`<section aria-labelledby="across-heading">
            <h2 id="across-heading">${text.across}</h2>
            ${acrossGoes.map((sentence) => html`<p>${sentence}</p>`)}
          </section>`}
      <section aria-labelledby="cups-heading">
        <h2 id="cups-heading">${text.result}</h2>
        <ul class="samples">
          ${samples.map((sample) => this.#sample(sample))}
        </ul>
      </section>
      ${others.length === 0
        ? nothing
        : html`<details class="others">
            <summary>${text.others}</summary>
            ${others.every(({ standing }) => standing === 'described')
              ? html`<p class="aside">${text.described}</p>`
              : nothing}
            ${others.map((question) => this.#question(question))}
          </details>`}
      ${this.#proofs([...first, ...others])}`;
  }

  #sample({ sample, lot, cropName, variety, fruits, bitter, goodFor }) {
    return html`<li>
      <a href="/lot/${lot}">${sample}</a>
      <span>${[variety, cropName].filter(Boolean).join(', ')}</span>
      <span class="aside"
        >${[text.fruit(fruits), bitter ? text.stopped : '', goodFor.length ? text.goodFor(goodFor) : '']
          .filter(Boolean)
          .join(' · ')}</span
      >
    </li>`;
  }

  #question(question) {
    return html`<section class="question">
      <h2>${capital(question.question)}</h2>
      ${question.goes.map((go, index) => this.#go(question, go, index))}
    </section>`;
  }

  #go(question, go, index) {
    return html`${question.goes.length > 1 ? html`<h3>${text.go(index + 1)}</h3>` : nothing}
      ${go.conclusions.length === 0 ? nothing : html`<p class="gist">${this.#named(go.conclusions[0])}</p>`}
      ${go.conclusions.slice(1).map((sentence) => html`<p>${this.#named(sentence)}</p>`)}
      ${go.means.length === 0
        ? html`<p>${text.nobodyCounts}</p>`
        : html`<dot-plot .question=${question} .means=${go.means} .names=${this.#names()}></dot-plot>
            <p class="aside">${text.counted(go.tasters)}. ${text.meanWhy}</p>`}`;
  }

  /** All that proves the words above, folded, in one place. */
  #proofs(questions) {
    const proven = questions.flatMap(({ question, goes }) =>
      goes.map(({ proofs }, index) => ({
        title: goes.length > 1 ? `${capital(question)}, ${text.go(index + 1)}` : capital(question),
        proofs,
      })),
    ).filter(({ proofs }) => proofs.length > 0);
    return proven.length === 0
      ? nothing
      : html`<details class="proofs">
          <summary>${text.proofs}</summary>
          ${proven.map(
            ({ title, proofs }) =>
              html`<h3>${title}</h3>
                <ul class="conclusions">
                  ${proofs.map((sentence) => html`<li>${sentence}</li>`)}
                </ul>`,
          )}
        </details>`;
  }

  /** The sentence with the varieties' names where it says the samples' codes. */
  #named(sentence) {
    const names = this.#names();
    return sentence.replace(/[\p{L}\p{N}:+]+/gu, (word) => names.get(word) ?? word);
  }

  #names() {
    return new Map(
      this.result.samples.map(({ sample, variety }) => [
        sample,
        variety === '' ? sample : `${variety} (${sample})`,
      ]),
    );
  }
}

const capital = (question) => question.charAt(0).toUpperCase() + question.slice(1);

// <tasting-result .result> is what a closed tasting says: what was in the cups, then question by
// question where each sample lies, and in words what may be concluded from it.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { words } from './words.js';

const text = words.tastings;
const FIRST = 'liking';

export class TastingResult extends PageElement {
  static properties = { result: { attribute: false } };

  render() {
    const { samples, questions, acrossGoes } = this.result;
    const first = questions.filter(({ key }) => key === FIRST);
    const others = questions.filter(({ key }) => key !== FIRST);
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
            ${others.map((question) => this.#question(question))}
          </details>`}`;
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
      ${go.conclusions.length === 0 ? nothing : html`<p class="gist">${gist(go.conclusions)}</p>`}
      ${go.means.length === 0
        ? html`<p>${text.nobodyCounts}</p>`
        : html`<dot-plot .question=${question} .means=${go.means} .names=${this.#names()}></dot-plot>
            <p class="aside">${text.counted(go.tasters)}. ${text.meanWhy}</p>`}
      ${go.groups.map((group) => html`<p>${text.notApart(group.map((s) => this.#names().get(s) ?? s))}</p>`)}
      <ul class="conclusions">
        ${go.conclusions.map((sentence) => html`<li>${sentence}</li>`)}
      </ul>`;
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

/** The first of what may be concluded, without the figures that prove it; those stand below. */
const gist = (conclusions) => conclusions.slice(0, 2).join(' ').replace(/ \([^()]*\)/g, '');

const capital = (question) => question.charAt(0).toUpperCase() + question.slice(1);

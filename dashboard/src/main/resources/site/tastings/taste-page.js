// <taste-page secret> is what lies before one taster: one cup at a time, in the order served, with
// keys for a thumb. Every answer is on the phone before it goes out, and waits there for the network.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { keep, kept } from '../lib/keep.js';
import { PageElement } from '../lib/page-element.js';
import { Watch } from '../lib/watch.js';
import { outbox } from '../lots/outbox.js';
import { scaleKeys, useKeys } from './taste-keys.js';
import { words } from './words.js';

const text = words.taste;
// A cup that somebody found bitter must be gone from every phone within two seconds.
const REFRESH_MS = 1_500;
const NOT_FOUND = 404;
const BITTER = 'bitter';
const LIKING = 'liking';

export class TastePage extends PageElement {
  static properties = {
    secret: {},
    sheet: { state: true },
    failure: { state: true },
    hasRead: { state: true },
    index: { state: true },
  };

  #timer = 0;
  /** What was said on this phone: by cup `{ answers, goodFor }`. */
  #said = {};
  /** What of it is not in the outbox yet. */
  #unsent = {};

  constructor() {
    super();
    Object.assign(this, { secret: '', sheet: null, failure: null, hasRead: false, index: 0 });
    new Watch(this, outbox);
  }

  connectedCallback() {
    super.connectedCallback();
    const known = kept(this.#keptAs);
    if (known !== null) {
      this.#said = known.said;
      this.#unsent = known.unsent;
      Object.assign(this, { sheet: known.sheet, hasRead: known.hasRead, index: known.index });
    }
    this.#load();
    this.#timer = setInterval(() => this.#load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  render() {
    const { sheet, failure } = this;
    if (sheet === null) {
      return failure === null
        ? html`<p role="status">${words.page.loading}</p>`
        : html`<p class="notice" role="alert">
            ${failure.status === NOT_FOUND ? text.lost : `${words.live.why[failure.kind]}`}
          </p>`;
    }
    const isDone = this.index >= sheet.cups.length;
    return html`${this.#waiting()}
    ${!sheet.open
      ? html`<p class="notice" role="status">${text.over}</p>`
      : !this.hasRead
        ? this.#cautions(sheet)
        : isDone
          ? this.#end()
          : this.#cup(sheet.cups[this.index], sheet)}`;
  }

  updated(changed) {
    if (changed.has('index') && changed.get('index') !== undefined) {
      scrollTo(0, 0);
      this.querySelector('h2')?.focus({ preventScroll: true });
    }
  }

  #cautions({ taster, cautions, warmUp }) {
    return html`<section class="cup">
      <h2>${text.hello(taster)}</h2>
      <ul class="cautions">
        ${cautions.map((caution) => html`<li>${caution}</li>`)}
      </ul>
      ${warmUp === null ? nothing : html`<p>${text.warmUp(warmUp)}</p>`}
      <p class="onward">
        <button type="button" class="does" @click=${() => this.#begin()}>${text.begin}</button>
      </p>
    </section>`;
  }

  #cup(cup, sheet) {
    const answers = this.#answers(cup);
    return html`<section class="cup" aria-labelledby="cup-heading">
      <header>
        <h2 id="cup-heading" tabindex="-1">${text.cup(cup.code)}</h2>
        <span class="aside">${text.place(this.index + 1, sheet.cups.length)}</span>
      </header>
      ${answers[BITTER] === 1
        ? this.#stopped(cup, text.stop, true)
        : cup.stopped
          ? this.#stopped(cup, text.stopOther, false)
          : answers[BITTER] === undefined
            ? this.#bitter(cup)
            : this.#questions(cup, sheet, answers)}
      <p class="onward">
        ${this.index === 0
          ? nothing
          : html`<button type="button" @click=${() => this.#go(this.index - 1)}>${text.back}</button>`}
        ${answers[LIKING] === undefined && answers[BITTER] !== 1 && !cup.stopped
          ? nothing
          : html`<button type="button" class="does" @click=${() => this.#go(this.index + 1)}>
              ${this.index + 1 === sheet.cups.length ? text.last : text.next}
            </button>`}
      </p>
    </section>`;
  }

  #bitter(cup) {
    return html`<p class="asks">${text.bitterAsk}</p>
      <div class="ladder">
        <button type="button" @click=${() => this.#answer(cup, BITTER, 0)}>${text.bitterNo}</button>
        <button type="button" @click=${() => this.#answer(cup, BITTER, 1, true)}>
          ${text.bitterYes}
        </button>
      </div>`;
  }

  #stopped(cup, sentence, isMine) {
    return html`<p class="stop" role="alert">${sentence}</p>
      ${isMine
        ? html`<p>${this.sheet.cautions[0]}</p>
            <p class="ways">
              <button type="button" @click=${() => this.#answer(cup, BITTER, 0, true)}>
                ${text.mistaken}
              </button>
            </p>`
        : nothing}`;
  }

  #questions(cup, { questions, uses }, answers) {
    const liking = questions.find(({ key }) => key === LIKING);
    const others = questions.filter(({ key }) => key !== LIKING && key !== BITTER);
    return html`<p class="asks" id="liking-label">${text.likingAsk}</p>
      <div class="ladder" role="group" aria-labelledby="liking-label">
        ${liking.words
          .map((word, step) => ({ word, value: liking.lowest + step }))
          .reverse()
          .map(
            ({ word, value }) =>
              html`<button
                type="button"
                aria-pressed=${answers[LIKING] === value}
                @click=${() => this.#answer(cup, LIKING, value, true)}
              >
                <b>${value}</b> ${word}
              </button>`,
          )}
      </div>
      <p class="ways">
        <button type="button" @click=${() => this.#answer(cup, BITTER, 1, true)}>
          ${text.bitterLater}
        </button>
      </p>
      ${answers[LIKING] === undefined
        ? nothing
        : html`<h3>${text.more}</h3>
            ${others.map((question) =>
              scaleKeys(question, answers[question.key], (value) =>
                this.#answer(cup, question.key, value),
              ),
            )}
            ${useKeys(uses, this.#goodFor(cup), (use) => this.#tick(cup, use))}`}`;
  }

  #end() {
    return html`<section class="cup">
      <h2 tabindex="-1">${text.all}</h2>
      <p class="onward">
        <button type="button" @click=${() => this.#go(0)}>${text.look}</button>
      </p>
    </section>`;
  }

  #waiting() {
    const own = outbox.items.filter(({ path }) => path === this.#path);
    const waiting = own.filter(({ state }) => state === 'waiting');
    const refused = own.filter(({ state }) => state === 'refused');
    return html`${waiting.length === 0
        ? nothing
        : html`<p class="kept" role="status">${text.waits(waiting.length)}</p>`}
      ${refused.map(
        ({ key, sentence }) =>
          html`<p class="problem" role="alert">
            ${text.refused} ${sentence}
            <button type="button" @click=${() => outbox.drop(key)}>${text.drop}</button>
          </p>`,
      )}`;
  }

  #answers({ code, answers }) {
    return { ...answers, ...this.#said[code]?.answers };
  }

  #goodFor({ code, goodFor }) {
    return this.#said[code]?.goodFor ?? goodFor;
  }

  /** Notes an answer; it goes out at once where `goesOut`, or else with the next that does. */
  #answer(cup, key, value, goesOut = false) {
    this.#note(cup, { answers: { [key]: value } });
    if (goesOut) {
      this.#send(cup);
    }
  }

  #tick(cup, use) {
    const ticked = this.#goodFor(cup);
    const goodFor = ticked.includes(use) ? ticked.filter((u) => u !== use) : [...ticked, use];
    this.#note(cup, { goodFor });
  }

  #note({ code }, news) {
    this.#said[code] = merged(this.#said[code], news);
    this.#unsent[code] = merged(this.#unsent[code], news);
    this.#keep();
    this.requestUpdate();
  }

  #send({ code }) {
    const unsent = this.#unsent[code];
    if (unsent !== undefined) {
      delete this.#unsent[code];
      outbox.score(this.#path, { code, ...unsent });
      this.#keep();
    }
  }

  #begin() {
    this.hasRead = true;
    this.#keep();
  }

  #go(index) {
    const cup = this.sheet.cups[this.index];
    if (cup !== undefined) {
      this.#send(cup);
    }
    this.index = index;
    this.#keep();
  }

  get #path() {
    return `/api/taste/${encodeURIComponent(this.secret)}`;
  }

  get #keptAs() {
    return `taste.${this.secret}`;
  }

  #keep() {
    const { sheet, hasRead, index } = this;
    keep(this.#keptAs, { sheet, hasRead, index, said: this.#said, unsent: this.#unsent });
  }

  async #load() {
    try {
      this.sheet = (await getJson(this.#path)).body;
      this.failure = null;
      this.#keep();
    } catch (failure) {
      this.failure = failure;
    }
  }
}

const merged = (before, news) => ({
  ...before,
  ...news,
  answers: { ...before?.answers, ...news.answers },
});

// <lot-page code> is one lot: what to do with it and why, what can be noted of it, and all it has
// lived through. What can be noted works without a network; the rest is as the shed told it last.
import { html, nothing } from 'lit';
import { getJson, send } from '../lib/api.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { count, farmDay, moment, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { book, withWaiting } from './book.js';
import { accounts, curesAs, fruits, liking, stays, survival, tastings, weights } from './lot-facts.js';
import { outbox } from './outbox.js';
import { expectedOf, nameOf, saidOf, verdictOf } from './sentences.js';
import { words } from './words.js';
import { sentence } from '../you/form.js';

const text = words.lot;
const REFRESH_MS = 60_000;
const KITCHEN = ['method', 'temperatureC', 'cut', 'doneWhen', 'servedAtC', 'part'];
const MAIN_WAYS = { moved: text.move, weighed: text.weigh, culled: text.cull, used: text.use };
const OTHER_WAYS = {
  recounted: text.recount,
  noted: text.note,
  attested: text.attest,
  reserved: text.reserve,
  'kitchen-taste': text.unfit,
};

export class LotPage extends PageElement {
  static properties = {
    code: {},
    view: { state: true },
    failure: { state: true },
    /** The tasting of a second fruit: its name once it is planned, or why it is not. */
    second: { state: true },
    /** What is open over the page: `{ kind, lots, ... }`, or null. */
    sheet: { state: true },
  };

  #timer = 0;
  #asked = '';
  #asking = false;
  #reload = () => this.#load();
  #comeBack = () => live.isBackAfter(this.failure) && !this.#asking && this.#load();

  constructor() {
    super();
    Object.assign(this, { view: null, failure: null, sheet: null, second: {} });
    [book, me, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    if (book.view === null) {
      book.load();
    }
    outbox.addEventListener('said', this.#reload);
    live.addEventListener('change', this.#comeBack);
    this.#timer = setInterval(this.#reload, REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    outbox.removeEventListener('said', this.#reload);
    live.removeEventListener('change', this.#comeBack);
    clearInterval(this.#timer);
  }

  willUpdate() {
    if (this.code !== this.#asked) {
      this.#asked = this.code;
      this.view = null;
      this.second = {};
      this.#load();
    }
  }

  render() {
    const { view, failure } = this;
    const known = this.#known();
    const zone = view?.zone ?? book.view?.zone;
    if (known === undefined) {
      return html`${failure === null
          ? html`<p role="status">${words.page.loading}</p>`
          : html`<p class="notice" role="alert">
              ${failure.status === 404
                ? text.unknown(this.code)
                : `${words.live.why[failure.kind]} ${failure.detail}`}
            </p>`}
        <p class="ways"><a href="/lots">${text.back}</a></p>
        <outbox-bar></outbox-bar>`;
    }
    return html`${failure === null
        ? nothing
        : html`<p class="kept" role="status">
            ${words.lots.kept(moment(view?.at ?? book.view?.at))}
          </p>`}
      <article class="lot-sheet">
        ${this.#head(known, zone)} ${this.#ways(known)} ${this.#why(known, zone)}
        ${view?.secondFruit ? this.#secondFruit(view.secondFruit) : nothing}
        ${view === null ? nothing : this.#facts(view, known)}
      </article>
      <p class="ways"><a href="/lots">${text.back}</a></p>
      <outbox-bar
        @again=${({ detail }) => (this.sheet = { kind: detail.kind, lots: detail.lots, before: detail })}
      ></outbox-bar>
      ${this.sheet === null
        ? nothing
        : html`<say-sheet .asked=${this.sheet} @done=${() => (this.sheet = null)}></say-sheet>`}`;
  }

  /** The lot as the shed told it last, on this page or on any other. */
  #known() {
    const { view } = this;
    const line = book.lot(this.code);
    return view !== null && (line === undefined || line.version < view.lot.version)
      ? withWaiting(view.lot, outbox.items)
      : line;
  }

  #head(lot, zone) {
    const expected = lot.verdict === null ? '' : expectedOf(lot.verdict, zone);
    return html`<header>
      <p class="what"><strong>${nameOf(lot)}</strong> ${lot.variety ? html`<i>${lot.cropName}</i>` : nothing}</p>
      <p class="verdict" data-state=${lot.verdict?.state ?? ''}>${verdictOf(lot)}</p>
      ${expected === '' ? nothing : html`<p class="expected">${expected}</p>`}
      <p class="aside">
        ${[
          lot.place,
          words.lots.left(count(lot.fruits.sound)),
          words.lots.sinceHarvest(lot.sinceHarvestDays, count(lot.sinceHarvestDays)),
          lot.grade === null ? '' : words.grades[lot.grade],
          lot.plot === null ? '' : words.lots.plot(lot.plot),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
    </header>`;
  }

  #ways(lot) {
    if (!me.works) {
      return html`<p class="ways"><a href="/you">${words.lots.signIn}</a></p>`;
    }
    const button = ([kind, label]) =>
      html`<button type="button" @click=${() => (this.sheet = { kind, lots: [lot.code] })}>
        ${label}
      </button>`;
    return html`<section class="doing" aria-label=${text.do}>
      <p class="main">${Object.entries(MAIN_WAYS).map(button)}</p>
      <p class="other">
        ${Object.entries(OTHER_WAYS).map(button)}
        ${lot.verdict?.state === 'stopped' && me.isOwner ? button(['harm-lifted', text.lift]) : nothing}
      </p>
    </section>`;
  }

  #why({ verdict, cure }, zone) {
    return html`<section aria-labelledby="why-heading">
      ${verdict === null
        ? nothing
        : html`<h2 id="why-heading">${text.why}</h2>
            <ul class="reasons">
              ${verdict.reasons.map((reason) => html`<li>${told(reason)}</li>`)}
            </ul>
            <p><b>${text.wouldChange}:</b> ${told(verdict.wouldChange)}</p>
            <p class="aside">${text.sure(verdict.sureness)} ${text.asOf(moment(verdict.asOf))}</p>`}
      ${cure === null ? nothing : curesAs(cure, zone)}
    </section>`;
  }

  #secondFruit(second) {
    const { planned, refusal } = this.second;
    return html`<section class="second-fruit" aria-labelledby="second-heading">
      <h2 id="second-heading">${text.secondFruit}</h2>
      <p>${second.sentence}</p>
      <ul class="reasons">
        <li>${second.ifRipe}</li>
        <li>${second.ifUnripe}</li>
      </ul>
      ${refusal ? html`<p class="problem" role="alert">${refusal}</p>` : nothing}
      ${planned
        ? html`<p role="status">
            ${text.plannedSecond}
            <a href="/tasting/${encodeURIComponent(planned)}">${text.toTheTasting}</a>
          </p>`
        : me.isOwner
          ? html`<p class="ways">
              <button type="button" class="does" @click=${() => this.#planSecond(second)}>
                ${text.planSecond}
              </button>
            </p>`
          : nothing}
    </section>`;
  }

  /** Whoever tasted last tastes again, and where nobody has, whoever plans it. */
  async #planSecond({ name, samples, tasters, ...second }) {
    const alike = KITCHEN.map((field) => [field, second[field] || null]);
    try {
      const { tasting } = await send('POST', '/api/tastings', {
        name,
        samples,
        tasters: tasters.length === 0 ? [me.view.name] : tasters,
        ...Object.fromEntries(alike),
      });
      this.second = { planned: tasting.name };
    } catch (failure) {
      this.second = { refusal: sentence(failure) };
    }
  }

  #facts(view, lot) {
    return html`<div class="facts">
        ${accounts(view)} ${fruits(lot)} ${weights(view)} ${survival(view)} ${tastings(view)} ${liking(view)}
        ${stays(view)}
      </div>
      <section class="lot-air" aria-labelledby="air-heading">
        <h2 id="air-heading">${text.air}</h2>
        <lot-air
          code=${lot.code}
          since=${lot.harvestedAt}
          .cured=${lot.cure?.endedAt ?? null}
          at=${view.at}
        ></lot-air>
      </section>
      ${this.#story(view)}`;
  }

  #story({ story, zone }) {
    return html`<section class="story" aria-labelledby="story-heading">
      <h2 id="story-heading">${text.story}</h2>
      <ol>
        ${story.map(
          (entry) =>
            html`<li>
              <time datetime=${entry.at}>${farmDay(entry.at, zone)}</time>
              <p>
                ${saidOf(entry)} ${entry.isCorrected ? html`<em>(${text.corrected})</em>` : nothing}
                <small>${text.by(entry.by, moment(entry.saidAt, zone))}</small>
              </p>
              ${me.works
                ? html`<button
                    type="button"
                    aria-label="${text.correct}: ${saidOf(entry)}"
                    @click=${() =>
                      (this.sheet = { kind: 'corrected', lots: [this.code], entry })}
                  >
                    ${text.correct}
                  </button>`
                : nothing}
            </li>`,
        )}
      </ol>
    </section>`;
  }

  async #load() {
    const { code } = this;
    this.#asking = true;
    try {
      const { body } = await getJson(`/api/lots/${encodeURIComponent(code)}`);
      if (code === this.code) {
        this.view = body;
        this.failure = null;
        book.take(body.lot);
      }
    } catch (failure) {
      this.failure = failure;
    }
    this.#asking = false;
  }
}

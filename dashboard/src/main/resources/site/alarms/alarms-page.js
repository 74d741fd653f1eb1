// <alarms-page></alarms-page> shows what is open with what to do, what is silent and why, who works
// where, what has been, and the table that all of it follows.
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { moment } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { OVER, where } from './alarm-card.js';
import { standing } from './standing.js';
import { words } from './words.js';

const text = words.alarms;
const WORK_MS = 2 * 3_600_000;

export class AlarmsPage extends PageElement {
  static properties = {
    /** What was refused: `{ of, sentence }`, or nothing. */
    refusal: { state: true },
  };

  #leave = null;

  constructor() {
    super();
    this.refusal = null;
    [standing, me].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    this.#leave = standing.watch();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#leave();
  }

  render() {
    const { view, failure } = standing;
    const failed =
      failure === null
        ? nothing
        : html`<p class="notice" role="alert">${words.live.why[failure.kind]} ${failure.detail}</p>`;
    if (view === null) {
      return failure === null ? html`<p>${words.page.loading}</p>` : failed;
    }
    const isUnseen = ({ state }) => state === OVER;
    const lasting = view.open.filter((alarm) => !isUnseen(alarm));
    return html`${failed}
      <section class="alarms" aria-labelledby="open-heading">
        <h2 id="open-heading">${text.open}</h2>
        ${lasting.length === 0 ? html`<p class="notice">${text.none}</p>` : nothing}
        ${me.works || view.open.length === 0
          ? nothing
          : html`<p class="ways"><a href="/you">${text.signIn}</a></p>`}
        ${cards(lasting, view.at)}
      </section>
      ${this.#unseen(view.open.filter(isUnseen), view.at)}
      ${view.silent.length === 0
        ? nothing
        : html`<section class="alarms" aria-labelledby="silent-heading">
            <h2 id="silent-heading">${text.silent}</h2>
            ${cards(view.silent, view.at)}
          </section>`}
      ${view.accepted.length === 0 ? nothing : this.#accepted(view.accepted)}
      ${me.works ? this.#work(view) : nothing}
      <alarm-history></alarm-history>
      <alarm-rules></alarm-rules>`;
  }

  /** What came and went, the latest first: it burns no more, so one word may do for all. */
  #unseen(alarms, at) {
    if (alarms.length === 0) {
      return nothing;
    }
    const latestFirst = [...alarms].sort((a, b) => b.since.localeCompare(a.since));
    return html`<section class="alarms" aria-labelledby="unseen-heading">
      <h2 id="unseen-heading">${text.unseen}</h2>
      ${this.#refused('unseen')}
      ${me.works && alarms.length > 1
        ? html`<p class="ways">
            <button type="button" class="does" @click=${() => this.#seeAll(alarms)}>
              ${text.seenAll(alarms.length)}
            </button>
          </p>`
        : nothing}
      ${cards(latestFirst, at)}
    </section>`;
  }

  async #seeAll(alarms) {
    for (const { key } of alarms) {
      await this.#do(standing.answer(key, 'acknowledged'), 'unseen');
    }
  }

  #accepted(accepted) {
    return html`<section class="parts" aria-labelledby="accepted-heading">
      <h2 id="accepted-heading">${text.accepted}</h2>
      ${this.#refused('accepted')}
      <ul>
        ${accepted.map(
          (one) =>
            html`<li>
              <p class="part"><span>${one.name}</span> <span class="where">${where(one)}</span></p>
              ${me.works
                ? html`<p class="ways">
                    <button
                      type="button"
                      aria-label="${text.callAgain}: ${one.name}, ${where(one)}"
                      @click=${() => this.#do(standing.answer(one.key, 'not-accepted'), 'accepted')}
                    >
                      ${text.callAgain}
                    </button>
                  </p>`
                : nothing}
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #work({ rooms, at }) {
    return html`<section class="parts" aria-labelledby="work-heading">
      <h2 id="work-heading">${text.work}</h2>
      <p class="aside">${text.workNote}</p>
      ${this.#refused('work')}
      <ul>
        ${rooms.map(
          ({ room, until }) =>
            html`<li>
              <p class="part"><span>${text.room(room)}</span></p>
              <p class="reason">${until === null ? nothing : text.workUntil(moment(until))}</p>
              <p class="ways">
                <button
                  type="button"
                  aria-label="${until === null ? text.workHere : text.workEnds}: ${room}"
                  @click=${() => this.#setWork(room, until === null, at)}
                >
                  ${until === null ? text.workHere : text.workEnds}
                </button>
              </p>
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #setWork(room, begins, at) {
    const until = new Date(Date.parse(at) + (begins ? WORK_MS : -1000)).toISOString();
    return this.#do(standing.work(room, until), 'work');
  }

  async #do(asked, of) {
    try {
      await asked;
      this.refusal = null;
    } catch (failure) {
      this.refusal = { of, sentence: failure.detail || words.live.why[failure.kind] };
    }
  }

  #refused(of) {
    return this.refusal?.of === of
      ? html`<p class="problem" role="alert">${this.refusal.sentence}</p>`
      : nothing;
  }
}

const cards = (alarms, at) =>
  html`<ul>
    ${repeat(
      alarms,
      (alarm) => alarm.key,
      (alarm) => html`<li><alarm-card .alarm=${alarm} .at=${at}></alarm-card></li>`,
    )}
  </ul>`;

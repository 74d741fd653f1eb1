// <alarm-history></alarm-history> lists what has been called, seen and silenced, newest first.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { moment } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { where } from './alarm-card.js';
import { standing } from './standing.js';
import { words } from './words.js';

const text = words.alarms;

export class AlarmHistory extends PageElement {
  static properties = {
    /** What was answered; null before anything was. */
    turns: { state: true },
    next: { state: true },
    failure: { state: true },
  };

  #older = false;
  #shown = '';

  constructor() {
    super();
    this.turns = null;
    this.next = null;
    this.failure = null;
    new Watch(this, standing);
  }

  willUpdate() {
    // At first, and when what is open has changed, there is a newer turn; whoever reads old ones is
    // left alone.
    const shown = JSON.stringify(standing.view?.open.map(({ key, state }) => [key, state]) ?? []);
    if (shown !== this.#shown && !this.#older) {
      this.#shown = shown;
      this.#load();
    }
  }

  render() {
    return html`<section class="parts" aria-labelledby="history-heading">
      <h2 id="history-heading">${text.history}</h2>
      ${this.failure === null
        ? nothing
        : html`<p class="problem" role="alert">${words.live.why[this.failure.kind]}</p>`}
      ${this.turns === null && this.failure === null
        ? html`<p class="aside" role="status">${words.page.loading}</p>`
        : nothing}
      ${this.turns?.length === 0 ? html`<p class="aside">${text.noHistory}</p>` : nothing}
      <ol class="turns">
        ${this.turns?.map(
          (turn) =>
            html`<li>
              <time datetime=${turn.at}>${moment(turn.at)}</time>
              <span>
                <strong>${turn.name}</strong>, ${where(turn)}: ${text.turn[turn.what] ?? turn.what}${
                  turn.by === null ? nothing : ` (${turn.by})`
                }
              </span>
            </li>`,
        )}
      </ol>
      ${this.next === null
        ? nothing
        : html`<p class="ways">
            <button type="button" @click=${() => this.#load(this.next)}>${text.older}</button>
          </p>`}
    </section>`;
  }

  async #load(before = null) {
    try {
      const query = before === null ? '' : `?before=${encodeURIComponent(before)}`;
      const { body } = await getJson(`/api/alarms/history${query}`);
      this.#older = before !== null;
      this.turns = before === null ? body.turns : [...this.turns, ...body.turns];
      this.next = body.next;
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }
}

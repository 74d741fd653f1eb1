// <alarm-card .alarm .at> is one alarm as a grower needs it: what, where, since when, how bad, and
// above all what to do. Whoever works here can answer it.
import { html, nothing } from 'lit';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { moment, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { standing } from './standing.js';
import { words } from './words.js';

const text = words.alarms;

/** The state in which nothing is left to be done but to see it. */
export const OVER = 'returned-unacknowledged';
const HOUR_MS = 3_600_000;
const QUIET_HOURS = [1, 4, 12, 24];

export class AlarmCard extends PageElement {
  static properties = {
    alarm: { attribute: false },
    at: { attribute: false },
    choosing: { state: true },
    busy: { state: true },
    refusal: { state: true },
  };

  constructor() {
    super();
    this.choosing = false;
    this.busy = false;
    this.refusal = '';
    [me, units].forEach((source) => new Watch(this, source));
  }

  render() {
    const { alarm } = this;
    const title = `${alarm.name}, ${where(alarm)}`;
    return html`<article class="alarm" data-urgent=${alarm.isUrgent} data-over=${alarm.isOver}>
      <h3>
        ${alarm.isUrgent && !alarm.isOver
          ? html`<strong class="urgent">${text.urgent}</strong> `
          : nothing}${alarm.name}
      </h3>
      <p class="where">${where(alarm)}</p>
      ${alarm.howBad === null ? nothing : html`<p>${told(alarm.howBad)}</p>`}
      <p class="act"><strong>${alarm.state === OVER ? text.ifAgain : text.whatToDo}</strong> ${told(alarm.action)}</p>
      <p class="aside">
        ${(alarm.isOver ? text.overSince : text.since)(moment(alarm.since))}. ${text.state[alarm.state] ?? alarm.state}${alarm.until ===
        null
          ? nothing
          : ` ${text.until(moment(alarm.until))}`}.
      </p>
      <details>
        <summary>${text.why}</summary>
        <p>${alarm.cause}</p>
        <p>${alarm.consequence}</p>
      </details>
      ${this.refusal === ''
        ? nothing
        : html`<p class="problem" role="alert"><strong>${text.refused}</strong> ${this.refusal}</p>`}
      ${me.works ? this.#ways(alarm, title) : nothing}
    </article>`;
  }

  #ways(alarm, title) {
    if (this.choosing) {
      return html`<p class="ways" role="group" aria-label="${text.quietFor}: ${title}">
        <span>${text.quietFor}</span>
        ${QUIET_HOURS.map((h) => this.#way(text.hours(h), () => this.#shelve(h), title))}
        <button type="button" @click=${() => (this.choosing = false)}>${text.leave}</button>
      </p>`;
    }
    return html`<p class="ways">${this.#choices(alarm, title)}</p>
      ${alarm.needsCode
        ? html`<lock-out .alarm=${alarm} .title=${title}></lock-out>`
        : nothing}`;
  }

  #choices(alarm, title) {
    if (alarm.state === 'shelved') {
      return this.#way(text.unshelve, () => this.#answer('unshelved'), title);
    }
    if (alarm.state === 'out-of-service') {
      return this.#way(text.back, () => this.#answer('back-in-service'), title);
    }
    return html`${alarm.needsAnswer
      ? this.#way(text.seen, () => this.#answer('acknowledged'), title, 'does')
      : nothing}
    ${alarm.state.startsWith('latched') && !alarm.needsCode
      ? this.#way(text.reset, () => this.#answer('reset'), title)
      : nothing}
    ${alarm.isOver
      ? nothing
      : html`<button
            type="button"
            aria-label="${text.quiet}: ${title}"
            @click=${() => (this.choosing = true)}
          >
            ${text.quiet}
          </button>
          ${alarm.needsCode
            ? nothing
            : this.#way(text.repair, () => this.#answer('out-of-service'), title)}
          ${alarm.canBeAccepted
            ? this.#way(text.accept, () => this.#answer('accepted'), title)
            : nothing}`}`;
  }

  #way(label, does, title, kind = '') {
    return html`<button
      type="button"
      class=${kind}
      aria-label="${label}: ${title}"
      ?disabled=${this.busy}
      @click=${does}
    >
      ${label}
    </button>`;
  }

  #shelve(hours) {
    this.choosing = false;
    const until = new Date(Date.parse(this.at) + hours * HOUR_MS - 1000).toISOString();
    return this.#answer('shelved', until);
  }

  async #answer(answer, until = null) {
    this.busy = true;
    this.refusal = '';
    try {
      await standing.answer(this.alarm.key, answer, until);
    } catch (failure) {
      this.refusal = failure.detail || words.live.why[failure.kind];
    }
    this.busy = false;
  }
}

/** Where an alarm is, with the part that it is about. */
export const where = ({ room, thing }) =>
  [room === null ? text.shed : text.room(room), thing].filter(Boolean).join(', ');

// <alarm-rules></alarm-rules> opens the table of alarms: what is called about, when, what to do.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { PageElement } from '../lib/page-element.js';
import { duration } from '../lib/units.js';
import { words } from './words.js';

const text = words.alarms;

export class AlarmRules extends PageElement {
  static properties = { rules: { state: true }, failure: { state: true } };

  constructor() {
    super();
    this.rules = null;
    this.failure = null;
  }

  render() {
    return html`<details class="rules" @toggle=${() => this.#load()}>
      <summary>${text.rules}</summary>
      <p class="aside">${text.rulesNote}</p>
      ${this.failure === null
        ? nothing
        : html`<p class="problem" role="alert">${words.live.why[this.failure.kind]}</p>`}
      <ul>
        ${(this.rules ?? []).map((rule) => this.#rule(rule))}
      </ul>
    </details>`;
  }

  #rule(rule) {
    const facts = [
      text.priority[rule.priority] ?? rule.priority,
      rule.onDelaySeconds === 0 ? null : text.onDelay(duration(rule.onDelaySeconds)),
      rule.offDelaySeconds === 0 ? null : text.offDelay(duration(rule.offDelaySeconds)),
      rule.deadband === 0 ? null : text.deadband(rule.deadband),
      rule.latching ? text.latching : null,
      rule.quietDuringWork ? text.quietDuringWork : null,
    ].filter(Boolean);
    return html`<li>
      <h3>${rule.name}</h3>
      <p>${facts.join('; ')}.</p>
      <p>${rule.cause} ${rule.consequence}</p>
      <p><strong>${text.whatToDo}</strong> ${rule.action}</p>
      ${rule.suppresses.length === 0
        ? nothing
        : html`<p class="aside">${text.suppresses(rule.suppresses.join(', '))}</p>`}
    </li>`;
  }

  async #load() {
    if (this.rules !== null) {
      return;
    }
    try {
      this.rules = (await getJson('/api/alarms/rules')).body.rules;
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }
}

// <open-alarms></open-alarms> stands first on the front page: what is open and what to do. Nothing
// at all while all is well.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { where } from './alarm-card.js';
import { standing } from './standing.js';
import { words } from './words.js';

const text = words.alarms;
const MOST = 4;

export class OpenAlarms extends PageElement {
  #leave = null;

  constructor() {
    super();
    [standing, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    this.#leave = standing.watch();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#leave();
  }

  /** What lasts is told in full; what is over and unseen takes one line, for nothing burns. */
  render() {
    const open = standing.view?.open ?? [];
    if (open.length === 0) {
      return nothing;
    }
    const lasting = open.filter(({ isOver }) => !isOver);
    const more = lasting.length - MOST;
    const over = open.length - lasting.length;
    return html`<section class="alarms on-front" aria-labelledby="alarms-heading">
      <h2 id="alarms-heading">${lasting.length > 0 ? text.heading : text.overHeading}</h2>
      <ul>
        ${lasting.slice(0, MOST).map((alarm) => this.#alarm(alarm))}
      </ul>
      <p>
        ${more > 0 ? html`<a href="/alarms">${text.more(more)}</a>` : nothing}
        ${over > 0 ? html`<a href="/alarms">${text.over(over)}</a>` : nothing}
      </p>
    </section>`;
  }

  #alarm(alarm) {
    return html`<li data-urgent=${alarm.isUrgent}>
      <a href="/alarms">
        <strong>${alarm.isUrgent ? html`${text.urgent} ` : nothing}${alarm.name}</strong>
        <span class="where">${where(alarm)}</span>
      </a>
      <p>${told(alarm.howBad ?? '')} ${told(alarm.action)}</p>
    </li>`;
  }
}

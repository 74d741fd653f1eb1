// <open-alarms></open-alarms> stands first on the front page: what is open and what to do. Nothing
// at all while all is well.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
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
    new Watch(this, standing);
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
    const open = standing.view?.open ?? [];
    if (open.length === 0) {
      return nothing;
    }
    return html`<section class="alarms on-front" aria-labelledby="alarms-heading">
      <h2 id="alarms-heading">${text.heading}</h2>
      <ul>
        ${open.slice(0, MOST).map(
          (alarm) =>
            html`<li data-urgent=${alarm.isUrgent} data-over=${alarm.isOver}>
              <a href="/alarms">
                <strong
                  >${alarm.isUrgent && !alarm.isOver ? html`${text.urgent} ` : nothing}${alarm.name}</strong
                >
                <span class="where">${where(alarm)}</span>
              </a>
              <p>${alarm.howBad ?? nothing} ${alarm.action}</p>
            </li>`,
        )}
      </ul>
      ${open.length > MOST
        ? html`<p><a href="/alarms">${text.more(open.length - MOST)}</a></p>`
        : nothing}
    </section>`;
  }
}

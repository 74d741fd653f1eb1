// <tastings-page></tastings-page> is every tasting, the newest first, and the plan of the next.
import { html, nothing } from 'lit';
import { ListElement } from '../lib/list-element.js';
import { me } from '../lib/me.js';
import { route } from '../lib/route.js';
import { farmDay } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from './words.js';

const text = words.tastings;

export class TastingsPage extends ListElement {
  static properties = { planning: { state: true } };

  path = '/api/tastings';
  list = 'tastings';
  size = 40;

  constructor() {
    super();
    this.planning = false;
    new Watch(this, me);
  }

  shown(view) {
    return html`${this.#plan()}
      ${view.tastings.length === 0 ? html`<p class="notice">${text.none}</p>` : nothing}
      <ul class="tasting-rows">
        ${view.tastings.map((tasting) => this.#row(tasting))}
      </ul>
      ${this.more(text.older)}`;
  }

  #plan() {
    if (!me.isOwner) {
      return html`<p class="aside">${text.byOwner}</p>`;
    }
    return this.planning
      ? html`<plan-form
          @leave=${() => (this.planning = false)}
          @planned=${({ detail }) => route.go(`/tasting/${encodeURIComponent(detail)}`)}
        ></plan-form>`
      : html`<p class="ways">
          <button type="button" @click=${() => (this.planning = true)}>${text.plan}</button>
        </p>`;
  }

  #row({ name, closedAt, plannedAt, samples, tasters, cups, scored }) {
    return html`<li>
      <a href="/tasting/${encodeURIComponent(name)}">
        <strong>${name}</strong>
        <span>${closedAt === null ? text.underWay(scored, cups) : text.closed(farmDay(closedAt, this.view.zone))}</span>
        <span class="aside">${[text.made(samples, tasters), closedAt === null ? farmDay(plannedAt, this.view.zone) : '']
          .filter(Boolean)
          .join(' · ')}</span>
      </a>
    </li>`;
  }
}

// <tastings-page></tastings-page> is every tasting, the newest first, and the plan of the next.
import { html, nothing } from 'lit';
import { getJson } from '../lib/api.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { farmDay } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from './words.js';

const text = words.tastings;
const PAGE = 40;

export class TastingsPage extends PageElement {
  static properties = {
    view: { state: true },
    failure: { state: true },
    planning: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { view: null, failure: null, planning: false });
    new Watch(this, me);
  }

  connectedCallback() {
    super.connectedCallback();
    this.#load();
  }

  render() {
    const { view, failure } = this;
    if (view === null) {
      return failure === null
        ? html`<p role="status">${words.page.loading}</p>`
        : html`<p class="notice" role="alert">
            ${words.live.why[failure.kind]} ${failure.detail}
            <button type="button" @click=${() => this.#load()}>${words.live.tryNow}</button>
          </p>`;
    }
    return html`${this.#plan()}
      ${view.tastings.length === 0 ? html`<p class="notice">${text.none}</p>` : nothing}
      <ul class="tasting-rows">
        ${view.tastings.map((tasting) => this.#row(tasting))}
      </ul>
      ${view.tastings.length < view.total
        ? html`<p class="ways">
            <button type="button" @click=${() => this.#load(view.tastings)}>${text.older}</button>
          </p>`
        : nothing}`;
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
        <span class="aside">${text.made(samples, tasters)} · ${farmDay(plannedAt, this.view.zone)}</span>
      </a>
    </li>`;
  }

  /** @param {object[]} known what is shown already; the next ones come behind it */
  async #load(known = []) {
    try {
      const { body } = await getJson(`/api/tastings?from=${known.length}&size=${PAGE}`);
      this.view = { ...body, tastings: [...known, ...body.tastings] };
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }
}

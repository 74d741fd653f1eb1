// <shed-app></shed-app> is what every page stands in: masthead, ways to the other pages, footer. It
// shows the page that the address names, and asks for sign-in where reading needs it.
import { html, nothing } from 'lit';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { duration } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';
import { MENU, PAGES, menuOf, pageOf } from './pages.js';

/** A page is given so long to be filled before what comes later takes up the phone. */
const READABLE_MS = 600;
const AGAIN_MS = 5000;

export class ShedApp extends PageElement {
  static properties = { loaded: { state: true } };

  constructor() {
    super();
    this.loaded = new Set();
    [live, me, route].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    this.replaceChildren(); // What the index says until there is a page.
    super.connectedCallback();
  }

  render() {
    const page = pageOf(route.page);
    if (!this.loaded.has(page)) {
      this.#load(page);
    }
    const needsSignIn = live.failure?.status === 401 || live.failure?.status === 403;
    if (live.view === null && !needsSignIn && page.needsShed) {
      return this.#waiting();
    }
    const shown = live.view === null && needsSignIn && page.needsShed ? PAGES.you : page;
    if (!this.loaded.has(shown)) {
      this.#load(shown);
    }
    if (shown.standsAlone) {
      return html`<main id="page" tabindex="-1">
        <h1>${shown.title(route.name)}</h1>
        ${this.loaded.has(shown) ? shown.view(route.name) : html`<p>${words.page.loading}</p>`}
      </main>`;
    }
    return html`<stale-banner></stale-banner>
      <header class="masthead">
        <p class="site">${live.view?.siteName ?? nothing}</p>
        <live-line></live-line>
        ${this.#you(shown)} ${this.#nav(shown)}
      </header>
      <main id="page" tabindex="-1">
        ${shown === PAGES.now
          ? html`<h1 class="visually-hidden">${words.nav.now}</h1>`
          : html`<h1>${shown.title(route.name)}</h1>`}
        ${this.loaded.has(shown) ? shown.view(route.name) : html`<p>${words.page.loading}</p>`}
      </main>
      <footer><unit-switch></unit-switch></footer>`;
  }

  updated() {
    const { view } = live;
    // A page that stands alone shows nothing of the shed that could be out of date.
    const isStale = live.isStale && !pageOf(route.page).standsAlone;
    document.documentElement.toggleAttribute('data-stale', isStale);
    const site = view?.siteName ?? words.page.site;
    document.title = isStale ? words.live.title(duration(live.ageSeconds), site) : site;
  }

  #nav(shown) {
    return html`<nav aria-label=${words.nav.label}>
      ${MENU.map(
        (page) =>
          html`<a href=${page.path} aria-current=${page === menuOf(shown) ? 'page' : nothing}
            >${page.title('')}</a
          >`,
      )}
    </nav>`;
  }

  #you(shown) {
    const { you } = PAGES;
    return html`<a class="you" href=${you.path} aria-current=${shown === you ? 'page' : nothing}
      >${me.view?.name ?? words.nav.you}</a
    >`;
  }

  #waiting() {
    const { failure } = live;
    return html`<main class="waiting">
      <h1>${failure === null ? words.page.loading : words.page.nothingYet}</h1>
      ${failure === null
        ? nothing
        : html`<p role="alert">${words.live.why[failure.kind]} ${failure.detail}</p>
            <button type="button" @click=${() => live.reconnect()}>${words.live.tryNow}</button>`}
    </main>`;
  }

  async #load(page) {
    await page.load();
    this.loaded = new Set([...this.loaded, page]);
    setTimeout(() => this.#bringMore(page), READABLE_MS);
  }

  /** What comes later; tried again until it has come, for a barn's network comes and goes. */
  #bringMore(page) {
    Promise.all(page.later.map((bring) => bring())).catch(() =>
      setTimeout(() => this.#bringMore(page), AGAIN_MS),
    );
  }
}

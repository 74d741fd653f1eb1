// The base of a page that shows one answer of the shed: it asks, says while it waits, and says what went
// wrong with a way to try again. What was shown stays, where something was.
import { html, nothing } from 'lit';
import { getJson } from './api.js';
import { PageElement } from './page-element.js';
import { words } from './words.js';

const NOT_FOUND = 404;

/** A page names its `path` and draws its `view` in `shown()`. */
export class AskingElement extends PageElement {
  static properties = { view: { state: true }, failure: { state: true } };

  constructor() {
    super();
    this.view = null;
    this.failure = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.load();
  }

  render() {
    const { view, failure } = this;
    return view === null && failure === null
      ? html`<p role="status">${words.page.loading}</p>`
      : html`${failure === null ? nothing : this.#failed(failure)}${view === null ? nothing : this.shown(view)}`;
  }

  /** What went wrong, in a sentence. @param {import('./api.js').RequestFailure} failure */
  why({ kind, detail, status }) {
    return status === NOT_FOUND && detail ? detail : `${words.live.why[kind]} ${detail}`;
  }

  async load() {
    try {
      this.view = await this.ask();
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }

  /** The answer of the shed, as it is to be shown. */
  async ask() {
    return (await getJson(this.path)).body;
  }

  #failed(failure) {
    return html`<p class="notice" role="alert">
      ${this.why(failure)}
      <button type="button" @click=${() => this.load()}>${words.live.tryNow}</button>
    </p>`;
  }
}

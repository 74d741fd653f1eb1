// The base of a page that shows a long list, which the shed gives in pieces.
import { html, nothing } from 'lit';
import { getJson } from './api.js';
import { AskingElement } from './asking-element.js';

/** A page names its `path`, the `list` in the answer, and the `size` of a piece. */
export class ListElement extends AskingElement {
  /** What is shown already; the next ones come behind it. */
  #known = [];

  async ask() {
    const { list, size } = this;
    const { body } = await getJson(`${this.path}?from=${this.#known.length}&size=${size}`);
    return { ...body, [list]: [...this.#known, ...body[list]] };
  }

  /** The way to the next piece; nothing where all is shown. @param {string} label */
  more(label) {
    const shown = this.view[this.list];
    return shown.length < this.view.total
      ? html`<p class="ways"><button type="button" @click=${() => this.#next(shown)}>${label}</button></p>`
      : nothing;
  }

  #next(shown) {
    this.#known = shown;
    this.load();
  }
}

// <folded-list .summary .list> opens to a long list, which is made when it is first opened.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';

export class FoldedList extends PageElement {
  static properties = {
    summary: {},
    /** @type {() => unknown} the list to be drawn */
    list: { attribute: false },
    wasOpened: { state: true },
  };

  constructor() {
    super();
    this.wasOpened = false;
  }

  render() {
    return html`<details class="changes" @toggle=${() => (this.wasOpened = true)}>
      <summary>${this.summary}</summary>
      ${this.wasOpened ? this.list() : nothing}
    </details>`;
  }
}

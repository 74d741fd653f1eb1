// The base of our elements: drawn into the page itself, so that one set of style sheets and one
// outline of headings and landmarks holds for all.
import { LitElement } from 'lit';

export class PageElement extends LitElement {
  createRenderRoot() {
    return this;
  }
}

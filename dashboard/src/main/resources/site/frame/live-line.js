// <live-line></live-line> says whether what is shown is live, and of when it is.
import { html, nothing } from 'lit';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { moment, otherZone } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';

export class LiveLine extends PageElement {
  constructor() {
    super();
    new Watch(this, live);
  }

  render() {
    if (live.view === null) {
      return html``;
    }
    const state = live.isLive
      ? words.live.now
      : live.isStale
        ? words.live.stale
        : words.live.reconnecting;
    return html`<p class="live-line">
      <strong role="status" data-live=${live.isLive}>${state}</strong>
      <time datetime=${live.view.at}>${words.live.since(moment(live.view.at))}</time>
      ${otherZone() === null ? nothing : html`<small>${words.live.farmTime(otherZone().replaceAll('_', ' '))}</small>`}
    </p>`;
  }
}

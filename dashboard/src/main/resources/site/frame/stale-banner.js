// <stale-banner></stale-banner> stands over a page that is no longer live: how old, why, try now; and over one
// that was opened before the shed was updated, which goes on working until somebody loads it again.
import { html } from 'lit';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { duration, moment } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';

export class StaleBanner extends PageElement {
  constructor() {
    super();
    new Watch(this, live);
  }

  render() {
    if (!live.isStale) {
      return live.isOfOldBuild ? this.#ofOldBuild() : html``;
    }
    const age = duration(live.ageSeconds);
    return html`<section class="stale-banner" aria-label=${words.live.stale}>
      <p>
        <strong>${words.live.staleBy(age)},</strong>
        ${words.live.from(moment(live.view.at))}.
        ${words.live.why[live.failure?.kind ?? 'silent']} ${live.failure?.detail ?? ''}
      </p>
      <button type="button" @click=${() => live.reconnect()}>${words.live.tryNow}</button>
    </section>`;
  }

  #ofOldBuild() {
    return html`<section class="stale-banner" aria-label=${words.live.ofOldBuild}>
      <p>${words.live.ofOldBuild}</p>
      <button type="button" @click=${() => location.reload()}>${words.live.loadAgain}</button>
    </section>`;
  }
}

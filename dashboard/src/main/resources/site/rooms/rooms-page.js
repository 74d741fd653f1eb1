// <rooms-page></rooms-page> is the shed at a glance: is it well, every room, every lot.
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { Watch } from '../lib/watch.js';
import { words } from '../lib/words.js';

export class RoomsPage extends PageElement {
  constructor() {
    super();
    new Watch(this, live);
  }

  render() {
    const { view } = live;
    const age = Math.floor(live.ageSeconds);
    return html`<p class="health">
        ${live.isStale ? html`<small>${words.live.lastHeard}</small>` : nothing}${view.health}
      </p>
      <open-alarms></open-alarms>
      <section class="rooms" aria-label=${words.rooms.heading}>
        ${view.rooms.length === 0 ? html`<p class="notice">${words.rooms.none}</p>` : nothing}
        ${repeat(
          view.rooms,
          (room) => room.name,
          (room) => html`<room-sheet .room=${room} .age=${age}></room-sheet>`,
        )}
      </section>
      <section class="lots" aria-labelledby="lots-heading">
        <h2 id="lots-heading">${words.lots.heading}</h2>
        ${view.lots.length === 0 ? html`<p class="notice">${words.lots.none}</p>` : nothing}
        <ul>
          ${repeat(
            view.lots,
            (lot) => lot.code,
            (lot) => html`<li><lot-entry .lot=${lot}></lot-entry></li>`,
          )}
        </ul>
      </section>`;
  }
}

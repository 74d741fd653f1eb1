// <rooms-page></rooms-page> is the shed at a glance: is it well, every room, what to eat next.
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { count } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from './words.js';

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
      ${this.#eat(view)}`;
  }

  /** What became ready and what is to be eaten first, each a way to its lot; silent without lots. */
  #eat({ toEat, lotCount }) {
    if (lotCount === 0) {
      return html`<p class="notice">${words.eat.none}</p>`;
    }
    return html`<section class="eat" aria-labelledby="eat-heading">
      <h2 id="eat-heading">${words.eat.heading}</h2>
      ${toEat.length === 0 ? html`<p class="aside">${words.eat.nothing}</p>` : nothing}
      <ol>
        ${repeat(
          toEat,
          (lot) => lot.code,
          (lot) =>
            html`<li>
              <a href="/lot/${lot.code}">
                <strong>${lot.variety || lot.cropName}</strong> <b>${lot.code}</b>
                <span class="verdict">${lot.words}</span>
                <span class="aside"
                  >${[lot.place, words.eat.free(count(lot.free)), lot.reason].join(' · ')}</span
                >
              </a>
            </li>`,
        )}
      </ol>
      <p class="ways"><a href="/lots">${words.eat.all}</a></p>
    </section>`;
  }
}

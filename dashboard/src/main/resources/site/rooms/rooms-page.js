// <rooms-page></rooms-page> is the shed at a glance: is it well, every room, what to eat next.
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { live } from '../lib/live.js';
import { PageElement } from '../lib/page-element.js';
import { count, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words } from './words.js';

export class RoomsPage extends PageElement {
  constructor() {
    super();
    [live, units].forEach((source) => new Watch(this, source));
  }

  render() {
    const { view } = live;
    const age = Math.floor(live.ageSeconds);
    return html`<p class="health">
        ${live.isStale ? html`<small>${words.live.lastHeard}</small>` : nothing}${view.health}
      </p>
      ${this.#tonight(view)}
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

  /** On a phone the list of what to eat is screens away; its first line stands here too. */
  #tonight({ toEat: [lot] }) {
    return lot === undefined
      ? nothing
      : html`<p class="tonight">
          <a href="/lot/${lot.code}"
            >${words.eat.first}: <strong>${lot.variety || lot.cropName} ${lot.code}</strong>, ${lot.place}:
            ${lot.words}</a
          >
        </p>`;
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
                  >${[lot.place, words.eat.free(count(lot.free)), told(lot.reason)].join(' · ')}</span
                >
              </a>
            </li>`,
        )}
      </ol>
      <p class="ways"><a href="/lots">${words.eat.all}</a></p>
    </section>`;
  }
}

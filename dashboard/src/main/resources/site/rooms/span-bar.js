// The ways through time above a room's charts: spans, steps, the way out of a zoom, what is laid beside.
import { html, nothing } from 'lit';
import { live } from '../lib/live.js';
import { moved, scaled, SPANS } from './span.js';
import { words } from './words.js';

const text = words.room;

/**
 * @param {object} shown
 * @param {object} shown.stretch as `span.js` reads it
 * @param {number} shown.aroundMs the moment that stays where it is when the stretch grows
 * @param {string[]} shown.others the rooms that can be compared
 * @param {string} shown.beside the one that is; empty for none
 * @param {boolean} shown.outdoors
 * @param {(stretch: object) => string} shown.addressOf
 * @param {(change: { stretch?: object, beside?: string, outdoors?: boolean }) => void} shown.change
 */
export function spanBar({ stretch, aroundMs, others, beside, outdoors, addressOf, change }) {
  const step = (label, next) =>
    html`<button
      type="button"
      @click=${() => change({ stretch: { ...next(live.shedMs), within: stretch.within } })}
    >
      ${label}
    </button>`;
  return html`<nav class="spans" aria-label=${text.spans}>
    ${Object.keys(SPANS).map(
      (name) =>
        html`<a href=${addressOf({ name })} aria-current=${name === stretch.name ? 'true' : nothing}
          >${text.span[name]}</a
        >`,
    )}
    ${stretch.name === null
      ? html`<a class="out" href=${addressOf({ name: stretch.within })}
          >${text.out[stretch.within]}</a
        >`
      : nothing}
    <span class="steps">
      ${step(text.earlier, (now) => moved(stretch, -0.5, now))}
      ${step(text.later, (now) => moved(stretch, 0.5, now))}
      ${step(text.closer, (now) => scaled(stretch, 0.4, aroundMs, now))}
      ${step(text.wider, (now) => scaled(stretch, 2.5, aroundMs, now))}
    </span>
    <label class="tick"
      ><input
        type="checkbox"
        .checked=${outdoors}
        @change=${(event) => change({ outdoors: event.target.checked })}
      />
      ${text.showOutdoors}</label
    >
    ${others.length === 0
      ? nothing
      : html`<label class="tick"
          >${text.beside}
          <select name="beside" @change=${(event) => change({ beside: event.target.value })}>
            <option value="">${text.noRoom}</option>
            ${others.map(
              (name) => html`<option value=${name} ?selected=${name === beside}>${name}</option>`,
            )}
          </select></label
        >`}
  </nav>`;
}

// <output-strips room .view .second> draws for each output when it was on: as tall as the share of time,
// and nothing at all where nobody knows.
import { html } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { share } from '../lib/units.js';
import { partName } from './part-name.js';
import { words } from './words.js';

const text = words.room;

export class OutputStrips extends PageElement {
  static properties = {
    room: {},
    view: { attribute: false },
    /** Seconds after the view's begin at which the drawing begins. */
    from: { attribute: false },
    /** Seconds after the view's begin that are looked at; null for none. */
    second: { attribute: false },
  };

  render() {
    return html`<ul class="strips">
      ${this.view.outputs.map((strip) => this.#strip(strip))}
    </ul>`;
  }

  #strip({ name, onShare }) {
    const at = this.second === null ? undefined : onShare[Math.floor(this.#slots(this.second))];
    const start = this.#slots(this.from);
    const end = onShare.length;
    return html`<li>
      <p><span>${partName(name, this.room)}</span> <span class="said">${said(at)}</span></p>
      <svg viewBox="${start} 0 ${end - start} 1" preserveAspectRatio="none" aria-hidden="true">
        <path class="on" d=${bars(onShare, (part) => part ?? 0)} />
        <path class="unknown" d=${bars(onShare, (part) => (part === null ? 1 : 0))} />
        <path class="base" d="M${start} 1H${end}" />
      </svg>
    </li>`;
  }

  #slots(seconds) {
    return (seconds * 1000) / this.view.slotMillis;
  }
}

const said = (part) =>
  part === undefined
    ? ''
    : part === null
      ? text.notKnown
      : part === 1
        ? words.rooms.on
        : part === 0
          ? words.rooms.off
          : text.onFor(share(part));

/** A bar for each run of slots of equal height, all in one path: a quiet season is a handful of them. */
function bars(shares, heightOf) {
  let path = '';
  let before = 0;
  shares.map(heightOf).forEach((height, slot) => {
    if (height !== before) {
      path += before > 0 ? `H${slot}V1` : '';
      path += height > 0 ? `M${slot} 1V${1 - height}` : '';
      before = height;
    }
  });
  return before > 0 ? `${path}H${shares.length}V1` : path;
}

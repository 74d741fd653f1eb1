// <output-strips room .view .second> draws for each output when it was on: as tall as the share of time,
// and nothing at all where nobody knows.
import { html, svg } from 'lit';
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
        ${runs(onShare).map(([from, to, part]) =>
          part === null
            ? svg`<rect class="unknown" x=${from} y="0" width=${to - from} height="1" />`
            : svg`<rect x=${from} y=${1 - part} width=${to - from} height=${part} />`,
        )}
        <path d="M${start} 1H${end}" />
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

/** Neighbours of equal share as one: a quiet season is a handful of pieces. */
function runs(shares) {
  const found = [];
  shares.forEach((part, i) => {
    const last = found.at(-1);
    if (last && last[2] === part) {
      last[1] = i + 1;
    } else if (part !== 0 || !last || last[2] !== 0) {
      found.push([i, i + 1, part]);
    }
  });
  return found.filter(([, , part]) => part !== 0);
}

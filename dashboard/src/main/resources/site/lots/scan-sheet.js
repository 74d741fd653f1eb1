// <scan-sheet></scan-sheet> reads squares with the camera: a room's placard says where to, crates say
// what. One crate alone opens its lot. Sends `move` with lots and place, and `done` when closed.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { book } from './book.js';
import { words } from './words.js';

const text = words.scan;
const LOOK_MS = 250;

/**
 * What a square says: a lot by its code or address, a place by its name or address.
 * @param {string} square
 * @returns {{ lot: string } | { place: string } | null}
 */
export function meantBy(square) {
  const [, kind, name] = /\/(lot|room|place)\/([^/?#]+)$/.exec(square) ?? [];
  const said = name === undefined ? square.trim() : decodeURIComponent(name);
  if (kind !== 'lot' && book.view?.places.includes(said)) {
    return { place: said };
  }
  const code = said.toUpperCase();
  return kind === 'lot' || (kind === undefined && book.lot(code)) ? { lot: code } : null;
}

export class ScanSheet extends PageElement {
  static properties = {
    place: { state: true },
    lots: { state: true },
    unknown: { state: true },
    hasCamera: { state: true },
  };

  #stream = null;
  #timer = 0;

  constructor() {
    super();
    Object.assign(this, { place: '', lots: [], unknown: '', hasCamera: true });
  }

  async firstUpdated() {
    this.querySelector('dialog').showModal();
    try {
      const video = { facingMode: 'environment' };
      this.#stream = await navigator.mediaDevices.getUserMedia({ video });
      const seen = this.querySelector('video');
      seen.srcObject = this.#stream;
      await seen.play();
      const detector = new BarcodeDetector({ formats: ['qr_code'] });
      this.#timer = setInterval(() => this.#look(detector, seen), LOOK_MS);
    } catch {
      this.hasCamera = false;
    }
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
    this.#stream?.getTracks().forEach((track) => track.stop());
  }

  render() {
    const { place, lots, unknown, hasCamera } = this;
    return html`<dialog class="say" aria-labelledby="scan-heading" @close=${() => this.#tell('done')}>
      <header>
        <h2 id="scan-heading">${text.heading}</h2>
        <button type="button" class="leave" @click=${() => this.querySelector('dialog').close()}>
          ${text.close}
        </button>
      </header>
      ${hasCamera
        ? html`<p>${text.ask}</p>
            <video muted playsinline></video>`
        : html`<p class="notice" role="alert">${text.noCamera}</p>`}
      <p role="status">
        ${[place ? text.place(place) : '', lots.length > 0 ? `${text.lots(lots.length)}: ${lots.join(', ')}` : '']
          .filter(Boolean)
          .join(' · ')}
      </p>
      ${unknown === '' ? nothing : html`<p class="problem" role="alert">${text.unknown(unknown)}</p>`}
      <p class="ways">
        ${place && lots.length > 0
          ? html`<button type="button" class="does" @click=${() => this.#tell('move', { lots, place })}>
              ${text.move(lots.length, place)}
            </button>`
          : nothing}
        ${!place && lots.length === 1
          ? html`<button type="button" class="does" @click=${() => route.go(`/lot/${lots[0]}`)}>
              ${text.open(lots[0])}
            </button>`
          : nothing}
      </p>
    </dialog>`;
  }

  async #look(detector, seen) {
    const found = await detector.detect(seen).catch(() => []);
    found.forEach(({ rawValue }) => this.#read(rawValue));
  }

  #read(square) {
    const meant = meantBy(square);
    this.unknown = meant === null ? square.slice(0, 60) : '';
    if (meant?.place) {
      this.place = meant.place;
    } else if (meant?.lot && !this.lots.includes(meant.lot)) {
      this.lots = [...this.lots, meant.lot];
      navigator.vibrate?.(60);
    }
  }

  #tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

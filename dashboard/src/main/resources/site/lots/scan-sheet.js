// <scan-sheet></scan-sheet> reads squares with the camera: a room's placard says where to, crates say
// what. One crate alone opens its lot. A page that came without encryption gets no camera from the browser;
// there the phone takes photographs. Sends `move` with lots and place, and `done` when closed.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { route } from '../lib/route.js';
import { book } from './book.js';
import { squareReader } from './square-reader.js';
import { words } from './words.js';

const text = words.scan;
const LOOK_MS = 250;
/** Until the next look when the last one came to nothing for want of the shed. */
const AGAIN_MS = 2000;
const CAMERA = { facingMode: 'environment', width: { ideal: 1280 } };

/**
 * What a square says: a lot by its code or address, a place by its name or address.
 * @param {string} square
 * @returns {{ lot: string } | { place: string } | null}
 */
export function meantBy(square) {
  const [, kind, name] = /\/(lot|room|place)\/([^/?#]+)$/.exec(square) ?? [];
  const said = name === undefined ? square.trim() : decoded(name);
  if (kind !== 'lot' && book.view?.places.includes(said)) {
    return { place: said };
  }
  const code = said.toUpperCase();
  return kind === 'lot' || (kind === undefined && book.lot(code)) ? { lot: code } : null;
}

/** Squares of others may say anything. */
function decoded(name) {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}

export class ScanSheet extends PageElement {
  static properties = {
    place: { state: true },
    lots: { state: true },
    /** What a square said that means nothing here. */
    unknown: { state: true },
    hasCamera: { state: true },
    /** What became of the photograph: it is being looked at, or shows no square. @type {'' | 'looking' | 'bare'} */
    photograph: { state: true },
    /** Why no square can be read at present. @type {RequestFailure | null} */
    failure: { state: true },
  };

  #reading = squareReader();
  #stream = null;
  #timer = 0;

  constructor() {
    super();
    Object.assign(this, { place: '', lots: [], unknown: '', hasCamera: true });
    Object.assign(this, { photograph: '', failure: null });
  }

  async firstUpdated() {
    this.querySelector('dialog').showModal();
    try {
      this.#stream = await navigator.mediaDevices.getUserMedia({ video: CAMERA });
      const seen = this.querySelector('video');
      seen.srcObject = this.#stream;
      await seen.play();
      this.#look(seen);
    } catch {
      this.hasCamera = false;
    }
    if (!this.isConnected) {
      this.#end();
    }
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#end();
  }

  #end() {
    clearTimeout(this.#timer);
    this.#stream?.getTracks().forEach((track) => track.stop());
  }

  render() {
    const { place, lots, unknown, failure } = this;
    return html`<dialog class="say" aria-labelledby="scan-heading" @close=${() => this.#tell('done')}>
      <header>
        <h2 id="scan-heading">${text.heading}</h2>
        <button type="button" class="leave" @click=${() => this.querySelector('dialog').close()}>
          ${text.close}
        </button>
      </header>
      ${this.hasCamera
        ? html`<p>${text.ask}</p>
            <video muted playsinline></video>`
        : this.#photographs()}
      <p role="status">
        ${[place ? text.place(place) : '', lots.length > 0 ? `${text.lots(lots.length)}: ${lots.join(', ')}` : '']
          .filter(Boolean)
          .join(' · ')}
      </p>
      ${unknown === '' ? nothing : html`<p class="problem" role="alert">${text.unknown(unknown)}</p>`}
      ${failure === null
        ? nothing
        : html`<p class="problem" role="alert">${text.unread} ${failure.detail || text.why[failure.kind]}</p>`}
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

  #photographs() {
    const looking = this.photograph === 'looking';
    return html`<p>${text.askPhotograph}</p>
      <p class="ways">
        <button type="button" ?disabled=${looking} @click=${() => this.querySelector('input').click()}>
          ${looking ? text.looking : text.photograph}
        </button>
        <input hidden type="file" accept="image/*" capture="environment" @change=${this.#photographed} />
      </p>
      ${this.photograph === 'bare' ? html`<p class="notice" role="alert">${text.bare}</p>` : nothing}`;
  }

  async #photographed({ target }) {
    const [file] = target.files;
    if (file === undefined) {
      return;
    }
    this.photograph = 'looking';
    const taken = await createImageBitmap(file).catch(() => null);
    const squares = taken === null ? 0 : await this.#readOff(taken);
    this.photograph = squares === 0 && this.failure === null ? 'bare' : '';
    target.value = ''; // The same picture may be chosen again.
  }

  async #look(seen) {
    await this.#readOff(seen);
    if (this.isConnected) {
      this.#timer = setTimeout(() => this.#look(seen), this.failure === null ? LOOK_MS : AGAIN_MS);
    }
  }

  /** Takes in what the squares in a picture say, and returns how many there are. */
  async #readOff(picture) {
    try {
      const squares = await (await this.#reading)(picture);
      squares.forEach((square) => this.#read(square));
      this.failure = null;
      return squares.length;
    } catch (failure) {
      this.failure = failure;
      return 0;
    }
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

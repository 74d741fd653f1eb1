// <say-sheet .asked> asks what is to be noted of one or several lots, in large keys and without any
// typing of names, and hands it to the outbox. Sends `done` when it is closed.
import { html, nothing } from 'lit';
import { PageElement } from '../lib/page-element.js';
import { book } from './book.js';
import { outbox } from './outbox.js';
import { QUESTIONS } from './questions.js';
import { words } from './words.js';

const text = words.say;

const HEADINGS = {
  moved: words.lot.move,
  weighed: words.lot.weigh,
  culled: words.lot.cull,
  used: words.lot.use,
  recounted: words.lot.recount,
  noted: words.lot.note,
  reserved: words.lot.reserve,
  'kitchen-taste': words.lot.unfit,
  'harm-lifted': words.lot.lift,
  harvested: words.lots.add,
};

/** @param {string} lots their codes, or nothing where it is not known yet */
const headingOf = (kind, lots) =>
  kind === 'attested'
    ? text.hasCured(lots)
    : kind === 'corrected'
      ? text.correctOf(lots)
      : text.heading(HEADINGS[kind], lots);

export class SaySheet extends PageElement {
  static properties = {
    /** `{ kind, lots }`, with `place`, `before` or `entry` where that is known already. */
    asked: { attribute: false },
    /** What has been answered so far, by the columns of a file of lots. */
    fields: { state: true },
    /** What stands on the pad, and other things that are no answer yet. */
    draft: { state: true },
    refusal: { state: true },
    noted: { state: true },
  };

  constructor() {
    super();
    Object.assign(this, { fields: {}, draft: {}, refusal: '', noted: '' });
  }

  willUpdate(changed) {
    if (changed.has('asked') && this.asked) {
      this.fields = { ...(this.asked.before?.fields ?? {}) };
      this.draft = QUESTIONS[this.asked.kind].begin(this);
    }
  }

  firstUpdated() {
    this.querySelector('dialog').showModal();
    if (this.asked.kind === 'moved' && this.asked.place) {
      this.say({ place: this.asked.place });
    }
  }

  /** What is missing is said at the top, and the key that was tapped may lie far below. */
  updated(changed) {
    if (changed.has('refusal')) {
      this.querySelector('.problem')?.scrollIntoView({ block: 'nearest' });
    }
  }

  render() {
    const { kind, lots } = this.asked;
    return html`<dialog class="say" aria-labelledby="say-heading" @close=${() => this.#leave()}>
      <form method="dialog" @submit=${(event) => event.preventDefault()}>
        <header>
          <h2 id="say-heading">${headingOf(kind, lots.join(', '))}</h2>
          <button type="button" class="leave" @click=${() => this.#finish()}>
            ${this.noted === '' ? text.leave : text.finished}
          </button>
        </header>
        ${this.noted === '' ? nothing : html`<p role="status" class="noted">${this.noted}</p>`}
        ${this.refusal === '' ? nothing : html`<p class="problem" role="alert">${this.refusal}</p>`}
        ${QUESTIONS[kind].view(this)}
      </form>
    </dialog>`;
  }

  /** The only lot asked about, as it stands on this phone; undefined for several. */
  get lot() {
    return this.asked.lots.length === 1 ? book.lot(this.asked.lots[0]) : undefined;
  }

  /** Remembers part of an answer. */
  answer(fields) {
    this.fields = { ...this.fields, ...fields };
    this.refusal = '';
  }

  /** Remembers something that is no answer yet. */
  think(draft) {
    this.draft = { ...this.draft, ...draft };
    this.refusal = '';
  }

  /** Says what is missing. */
  miss(what) {
    this.refusal = text.wrong[what];
  }

  /**
   * Notes it, and closes unless there is a next one.
   * @param {object} fields the whole answer
   * @param {{ lots?: string[], next?: string }} [how] `next` is what is said of the one just noted
   */
  say(fields, { lots = this.asked.lots, next = '' } = {}) {
    const { kind, before, entry } = this.asked;
    if (before) {
      outbox.drop(before.key);
    }
    const seen = book.seen(lots);
    const isKept =
      kind === 'corrected'
        ? outbox.correct(entry.id, lots[0], fields, seen)
        : outbox.say({ kind, lots, fields, seen });
    if (!isKept) {
      this.refusal = words.outbox.full;
      return;
    }
    this.noted = next;
    if (next === '') {
      this.close();
    } else {
      this.draft = QUESTIONS[kind].begin(this);
    }
  }

  /** Takes back an entry that is being corrected. */
  withdraw() {
    const { entry, lots } = this.asked;
    outbox.withdraw([entry.id], lots, book.seen(lots));
    this.close();
  }

  close() {
    this.querySelector('dialog').close();
  }

  /** Nothing of what is done already is given up, and what stands on the pad neither. */
  #finish() {
    const { finish } = QUESTIONS[this.asked.kind];
    if (this.noted === '' || finish === undefined) {
      this.close();
    } else {
      finish(this);
    }
  }

  #leave() {
    this.dispatchEvent(new Event('done'));
  }
}

// Who the reader is, and what they may do.
import { getJson, send, useCsrfToken } from './api.js';
import { keep, kept } from './keep.js';

const KEPT_AS = 'me';

/** Emits `change` when somebody has signed in or out. */
class Me extends EventTarget {
  /** The answer of `/api/me`, or null before the first. */
  view = null;
  /** Whether the answer is that of an earlier day, for want of the shed's. */
  isRemembered = false;
  /** @type {import('./api.js').RequestFailure | null} why the shed did not say it; null if it did */
  failure = null;

  /** Asks the shed; where it does not answer, the reader is who they were when it last did. */
  async load() {
    this.failure = null;
    try {
      const { body } = await getJson('/api/me');
      this.#become(body);
    } catch (failure) {
      this.failure = failure;
      if (this.view === null && failure.kind !== 'refused' && kept(KEPT_AS) !== null) {
        this.isRemembered = true;
        this.view = kept(KEPT_AS);
        this.dispatchEvent(new Event('change'));
      }
      throw failure;
    }
  }

  /** @param {'set-up' | 'sign-in'} how @param {object} fields */
  async begin(how, fields) {
    this.#become(await send('POST', `/api/${how}`, fields));
  }

  async signOut() {
    await send('POST', '/api/sign-out', {});
    keep('lots', null); // What was read as somebody is not left for the next one.
    await this.load();
  }

  /** Tells whether the reader may do what a helper may. */
  get works() {
    return this.view?.role === 'owner' || this.view?.role === 'helper';
  }

  get isOwner() {
    return this.view?.role === 'owner';
  }

  #become(view) {
    this.view = view;
    this.isRemembered = false;
    keep(KEPT_AS, { ...view, csrfToken: null });
    useCsrfToken(view.csrfToken);
    this.dispatchEvent(new Event('change'));
  }
}

export const me = new Me();

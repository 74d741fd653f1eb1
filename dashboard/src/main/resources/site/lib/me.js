// Who the reader is, and what they may do.
import { getJson, send, useCsrfToken } from './api.js';

/** Emits `change` when somebody has signed in or out. */
class Me extends EventTarget {
  /** The answer of `/api/me`, or null before the first. */
  view = null;

  async load() {
    const { body } = await getJson('/api/me');
    this.#become(body);
  }

  /** @param {'set-up' | 'sign-in'} how @param {object} fields */
  async begin(how, fields) {
    this.#become(await send('POST', `/api/${how}`, fields));
  }

  async signOut() {
    await send('POST', '/api/sign-out', {});
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
    useCsrfToken(view.csrfToken);
    this.dispatchEvent(new Event('change'));
  }
}

export const me = new Me();

// How the alarms stand: asked for anew whenever the shed has something new to say, and answered by
// every change. Shared by the alarms' page, the front page and the way between them.
import { getJson, send } from '../lib/api.js';
import { live } from '../lib/live.js';

/** Emits `change` when there is something new to show. */
class Standing extends EventTarget {
  /** The answer of `/api/alarms`, or null before the first. */
  view = null;
  /** @type {import('../lib/api.js').RequestFailure | null} */
  failure = null;

  #heard = '';
  #watchers = 0;
  #hear = () => this.#follow();

  /** Follows the alarms while somebody looks; returns how to end it. */
  watch() {
    if (this.#watchers === 0) {
      this.#heard = live.view?.at ?? '';
      live.addEventListener('change', this.#hear);
      this.load();
    }
    this.#watchers += 1;
    return () => {
      this.#watchers -= 1;
      if (this.#watchers === 0) {
        live.removeEventListener('change', this.#hear);
      }
    };
  }

  async load() {
    try {
      this.#become((await getJson('/api/alarms')).body);
    } catch (failure) {
      this.failure = failure;
      this.dispatchEvent(new Event('change'));
    }
  }

  /** Answers an alarm; throws what went wrong. */
  async answer(alarm, answer, until = null, code = null) {
    this.#become(await send('POST', '/api/alarms/answers', { alarm, answer, until, code }));
    this.#later();
  }

  /** Says that somebody works in a room until a time. */
  async work(room, until) {
    this.#become(await send('POST', '/api/alarms/work', { room, until }));
    this.#later();
  }

  /** An answer takes effect at the next tick, which may be some seconds away. */
  #later() {
    [1000, 5000, 11_000].forEach((ms) => setTimeout(() => this.load(), ms));
  }

  #follow() {
    const at = live.view?.at ?? '';
    if (at !== this.#heard && !document.hidden) {
      this.#heard = at;
      this.load();
    }
  }

  #become(view) {
    this.view = view;
    this.failure = null;
    this.dispatchEvent(new Event('change'));
  }
}

export const standing = new Standing();

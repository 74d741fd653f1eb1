// The line to the shed: the latest state, how old it is, and whether it may still be called live.
import { RequestFailure, getJson } from './api.js';
import { useFarmZone } from './units.js';

/** Behind this file's address stands the name of the build that it is of. */
const { search } = new URL(import.meta.url);

const STALE_AFTER_SECONDS = 40;
const SILENT_AFTER_MS = 60_000;
const GRACE_AFTER_LOSS_MS = 4000;
const RETRY_DELAYS_MS = [1000, 2000, 4000, 8000, 15_000];

/**
 * Emits `change` whenever there is something new to show, at least once a second. Age is counted by
 * the server's clock, so a phone whose clock is wrong still tells the truth.
 */
class Live extends EventTarget {
  /** The latest state of `/api/now`, or null before the first. */
  view = null;
  /** @type {RequestFailure | null} why the line is down; null while it is up. */
  failure = null;
  /** True once the shed serves another build of the site than this page is of. */
  isOfOldBuild = false;

  #source = null;
  #serverAheadMs = 0;
  #heardMs = 0;
  #viewMs = 0;
  #lostMs = 0;
  #attempts = 0;
  #retry = 0;

  start() {
    setInterval(() => this.#beat(), 1000);
    addEventListener('online', () => this.reconnect());
    addEventListener('offline', () => this.#lose(new RequestFailure('offline')));
    document.addEventListener('visibilitychange', () =>
      document.hidden ? this.#rest() : this.reconnect(),
    );
    this.reconnect();
  }

  /**
   * Seconds since the state was true, by the server's clock, and never fewer than it has been here; 0
   * before the first state.
   */
  get ageSeconds() {
    const ageMs = Date.now() + this.#serverAheadMs - Date.parse(this.view?.at);
    return Number.isNaN(ageMs) ? 0 : Math.max(ageMs, Date.now() - this.#viewMs, 0) / 1000;
  }

  /** The shed's own time in milliseconds, which a phone's clock may be far from. */
  get shedMs() {
    return Date.parse(this.view?.at) + (Date.now() - this.#heardMs);
  }

  /** True while the figures must not pass for current ones. */
  get isStale() {
    const lost = this.failure !== null && Date.now() - this.#lostMs > GRACE_AFTER_LOSS_MS;
    return this.view !== null && (lost || this.ageSeconds > STALE_AFTER_SECONDS);
  }

  /** True while the line is up and the state fresh. */
  get isLive() {
    return this.view !== null && this.failure === null && !this.isStale;
  }

  /**
   * Tells whether the shed answers again after a request that did not reach it.
   * @param {RequestFailure | null} failure what became of the request
   */
  isBackAfter(failure) {
    return this.isLive && failure !== null && failure.kind !== 'refused';
  }

  /** Tries now instead of at the next turn. */
  async reconnect() {
    this.#rest();
    try {
      const { body, serverMs, build } = await getJson('/api/now');
      this.isOfOldBuild = build !== null && search !== '' && search !== `?${build}`;
      this.#serverAheadMs = Number.isNaN(serverMs) ? 0 : serverMs - Date.now();
      this.#hear(body);
      this.#listen();
    } catch (failure) {
      this.#lose(failure instanceof RequestFailure ? failure : new RequestFailure('unreachable'));
    }
  }

  /**
   * A browser grants one shed six connections in all: a page that nobody looks at, in another tab or
   * kept for the way back, must not hold one, or the seventh page waits in vain.
   */
  #rest() {
    clearTimeout(this.#retry);
    this.#source?.close();
    this.#source = null;
  }

  #listen() {
    this.#rest();
    if (document.hidden) {
      return;
    }
    const source = new EventSource('/api/live');
    this.#source = source;
    source.onopen = () => (this.#attempts = 0);
    source.onmessage = (message) => this.#hear(JSON.parse(message.data));
    source.onerror = () => {
      if (source === this.#source) {
        this.#lose(new RequestFailure(navigator.onLine ? 'unreachable' : 'offline'));
      }
    };
  }

  #hear(view) {
    this.view = view;
    useFarmZone(view.zone);
    this.failure = null;
    this.#viewMs = Date.now();
    this.#heardMs = this.#viewMs;
    this.#changed();
  }

  #lose(failure) {
    this.#source?.close();
    this.#source = null;
    if (this.failure === null) {
      this.#lostMs = Date.now();
    }
    this.failure = failure;
    const delay = RETRY_DELAYS_MS[Math.min(this.#attempts, RETRY_DELAYS_MS.length - 1)];
    this.#attempts += 1;
    clearTimeout(this.#retry);
    this.#retry = setTimeout(() => this.reconnect(), delay);
    this.#changed();
  }

  /** A line can die without a word, on a phone that slept; then ask again. */
  #beat() {
    if (this.#source !== null && Date.now() - this.#heardMs > SILENT_AFTER_MS) {
      this.#heardMs = Date.now();
      this.reconnect();
    }
    this.#changed();
  }

  #changed() {
    this.dispatchEvent(new Event('change'));
  }
}

/** The page's one line to the shed. */
export const live = new Live();

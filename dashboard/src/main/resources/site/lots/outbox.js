// What was noted on this phone, of lots or of a taster's cups, and has still to reach the shed. Kept on the phone, sent in order and
// each under its own key, so that a lost answer makes no double; what is refused stays with its
// sentence until somebody has read it.
import { newKey, send } from '../lib/api.js';
import { keep, kept } from '../lib/keep.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';

const KEPT_AS = 'outbox';
const RETRY_MS = 15_000;
const ENTRIES = '/api/lots/entries';
const UNAUTHORIZED = 401;
const STALE = 412;

/**
 * Emits `change` when something waits, goes out or is refused, and `said` with the shed's answer on lots.
 * An item is `{ key, kind, lots, fields, seen, enteredMs, method, path, body, state, sentence }`.
 */
class Outbox extends EventTarget {
  items = kept(KEPT_AS) ?? [];
  /** What was said last and can be taken back: `{ item, said }`; `said` is null while it waits. */
  last = null;
  /** Whether the shed wants somebody to sign in first. */
  needsSignIn = false;

  #sending = false;

  constructor() {
    super();
    this.items.forEach((item) => item.state === 'sending' && (item.state = 'waiting'));
    addEventListener('online', () => this.flush());
    addEventListener('storage', (event) => event.key === `rindward.${KEPT_AS}` && this.#reread());
    me.addEventListener('change', () => this.flush());
    live.addEventListener('change', () => live.isLive && this.#isWaiting() && this.flush());
    setInterval(() => this.#isWaiting() && this.flush(), RETRY_MS);
  }

  get waiting() {
    return this.items.filter((item) => item.state !== 'refused');
  }

  get refused() {
    return this.items.filter((item) => item.state === 'refused');
  }

  /**
   * Notes something of lots; it is on the phone when this returns.
   * @param {{ kind: string, lots: string[], fields: object, seen: object }} entry
   * @returns {boolean} false when the phone has no room for it
   */
  say({ kind, lots, fields, seen }) {
    return this.#add({ kind, lots, fields, seen, method: 'POST', path: ENTRIES });
  }

  /** Says an earlier entry right. @param {number} id @param {string} lot */
  correct(id, lot, fields, seen) {
    const path = `${ENTRIES}/${id}`;
    return this.#add({ kind: 'corrected', lots: [lot], fields, seen, method: 'PUT', path });
  }

  /** Takes entries back. @param {number[]} entries @param {string[]} lots */
  withdraw(entries, lots, seen = {}) {
    const path = '/api/lots/withdrawals';
    const change = { kind: 'takenBack', lots, fields: {}, seen, method: 'POST', path };
    return this.#add({ ...change, body: { entries } });
  }

  /**
   * Notes what a taster said of one cup. It can be said again, and so needs no undo.
   * @param {string} path of the taster's sheet @param {{ code: string }} said
   */
  score(path, said) {
    const { last } = this;
    const fields = { code: said.code };
    const change = { kind: 'scored', lots: [], fields, seen: {}, method: 'POST', path, body: said };
    const isKept = this.#add(change);
    this.last = last;
    return isKept;
  }

  /** Takes back what was said last: from the phone if it is still there, from the shed if not. */
  undo() {
    const { item, said } = this.last;
    this.last = null;
    if (said === null) {
      this.drop(item.key);
    } else {
      const seen = Object.fromEntries(said.lots.map((lot) => [lot.code, lot.version]));
      this.withdraw(said.entries, item.lots, seen);
      this.last = null;
    }
    this.#changed();
  }

  /** Forgets the offer to undo. */
  settle() {
    this.last = null;
    this.#changed();
  }

  /** Throws an entry away that has not gone out. */
  drop(key) {
    this.#keep(this.items.filter((item) => item.key !== key || item.state === 'sending'));
  }

  /** Sends a refused entry again although the lot has changed since. */
  anyway(key) {
    const again = (item) => ({ ...item, seen: {}, state: 'waiting', sentence: '' });
    this.#keep(this.items.map((item) => (item.key === key ? again(item) : item)));
    this.flush();
  }

  /** Sends what waits, one after the other, until the network or the sign-in is missing. */
  async flush() {
    if (this.#sending) {
      return;
    }
    this.#sending = true;
    try {
      for (let item = this.#next(); item; item = this.#next()) {
        if (!(await this.#send(item))) {
          break;
        }
      }
    } finally {
      this.#sending = false;
      this.#changed();
    }
  }

  #add(change) {
    const item = { ...change, key: newKey(), enteredMs: Date.now(), state: 'waiting', sentence: '' };
    this.last = { item, said: null };
    const isKept = this.#keep([...this.items, item]);
    this.flush();
    return isKept;
  }

  #next() {
    return this.items.find((item) => item.state === 'waiting');
  }

  #isWaiting() {
    return !this.#sending && this.#next() !== undefined;
  }

  /** @returns {Promise<boolean>} whether the next one may be tried */
  async #send(item) {
    try {
      if (me.view === null || me.isRemembered) {
        await me.load();
      }
    } catch {
      return false;
    }
    this.#mark(item.key, { state: 'sending' });
    try {
      const how = { key: item.key, ifMatch: tags(item.seen), attempts: 1 };
      const said = await send(item.method, item.path, bodyOf(item), how);
      this.needsSignIn = false;
      this.#said(item, said);
      return true;
    } catch (failure) {
      return this.#failed(item, failure);
    }
  }

  /** What waits for the same lots was entered on top of this, so it has seen what this has made. */
  #said(item, said) {
    const versions = new Map((said.lots ?? []).map((lot) => [lot.code, lot.version]));
    const isBasedOn = (other, code) => other.seen[code] === item.seen[code];
    this.#keep(
      this.items
        .filter(({ key }) => key !== item.key)
        .map((other) => {
          const codes = Object.keys(other.seen).filter(
            (code) => versions.has(code) && isBasedOn(other, code),
          );
          const news = Object.fromEntries(codes.map((code) => [code, versions.get(code)]));
          return { ...other, seen: { ...other.seen, ...news } };
        }),
    );
    if (this.last?.item.key === item.key) {
      this.last = { item, said };
    }
    if (said.lots !== undefined) {
      this.dispatchEvent(new CustomEvent('said', { detail: { said, item } }));
    }
  }

  #failed(item, failure) {
    const isRefused =
      failure.kind === 'refused' &&
      failure.status >= 400 &&
      failure.status < 500 &&
      failure.status !== UNAUTHORIZED &&
      failure.status !== 429;
    if (!isRefused) {
      this.needsSignIn = failure.status === UNAUTHORIZED;
      this.#mark(item.key, { state: 'waiting' });
      return false;
    }
    const isStale = failure.status === STALE;
    this.#mark(item.key, { state: 'refused', sentence: failure.detail, isStale });
    if (this.last?.item.key === item.key) {
      this.last = null;
    }
    return true;
  }

  #mark(key, marks) {
    this.#keep(this.items.map((item) => (item.key === key ? { ...item, ...marks } : item)));
  }

  #keep(items) {
    this.items = items;
    const isKept = keep(KEPT_AS, items);
    this.#changed();
    return isKept;
  }

  /** Another page of this site on the same phone has changed what waits. */
  #reread() {
    if (!this.#sending) {
      this.items = kept(KEPT_AS) ?? [];
      this.#changed();
    }
  }

  #changed() {
    this.dispatchEvent(new Event('change'));
  }
}

/** How long ago is said instead of when, for nobody trusts a phone's clock. */
function bodyOf({ kind, lots, fields, enteredMs, path, method, body }) {
  if (method === 'PUT') {
    return { fields };
  }
  const agoSeconds = Math.max(0, Math.round((Date.now() - enteredMs) / 1000));
  if (kind === 'scored') {
    return { ...body, agoSeconds };
  }
  return path === ENTRIES ? { kind, lots, fields, agoSeconds } : body;
}

const tags = (seen) =>
  Object.entries(seen)
    .map(([code, version]) => `"${code}-${version}"`)
    .join(', ');

export const outbox = new Outbox();

// The lots as this phone knows them: as the shed told them last, with what still waits to be told.
import { getJson } from '../lib/api.js';
import { keep, kept } from '../lib/keep.js';
import { live } from '../lib/live.js';
import { outbox } from './outbox.js';

const KEPT_AS = 'lots';
const PAGE = 200;

/** Emits `change` when there is something new to show. */
class Book extends EventTarget {
  /** The answer of `/api/lots` with all its lots, or null before the first. */
  view = kept(KEPT_AS);
  /** @type {import('../lib/api.js').RequestFailure | null} why it could not be asked; null if it could */
  failure = null;
  /** Whether lots without a fruit are among them. */
  all = false;

  #asking = false;

  constructor() {
    super();
    outbox.addEventListener('said', (event) => this.#take(event.detail));
    outbox.addEventListener('change', () => this.#changed());
    live.addEventListener('change', () => live.isBackAfter(this.failure) && !this.#asking && this.load());
  }

  /** Asks the shed again. */
  async load() {
    this.#asking = true;
    try {
      let view = null;
      for (let more = true; more; ) {
        const from = view?.lots.length ?? 0;
        const { body } = await getJson(`/api/lots?all=${this.all}&from=${from}&size=${PAGE}`);
        view = view === null ? body : { ...body, lots: [...view.lots, ...body.lots] };
        more = body.lots.length > 0 && view.lots.length < body.total;
      }
      this.view = view;
      this.failure = null;
      keep(KEPT_AS, view);
    } catch (failure) {
      this.failure = failure;
    }
    this.#asking = false;
    this.#changed();
  }

  /** @param {boolean} all whether lots without a fruit are asked for too */
  show(all) {
    this.all = all;
    return this.load();
  }

  /** Every lot, with what waits on this phone already applied. */
  get lots() {
    return (this.view?.lots ?? []).map((lot) => withWaiting(lot, outbox.items));
  }

  /** @param {string} code */
  lot(code) {
    return this.lots.find((lot) => lot.code === code);
  }

  /** The version of each lot as this phone has seen it. @param {string[]} codes */
  seen(codes) {
    const lots = new Map((this.view?.lots ?? []).map((lot) => [lot.code, lot.version]));
    return Object.fromEntries(
      codes.filter((code) => lots.has(code)).map((code) => [code, lots.get(code)]),
    );
  }

  /** A lot that the page of one lot has asked for. */
  take(line) {
    this.#take({ said: { lots: [line] }, item: { lots: [line.code] } });
  }

  #take({ said, item }) {
    if (this.view === null) {
      return;
    }
    const news = new Map(said.lots.map((lot) => [lot.code, lot]));
    const lots = this.view.lots
      .filter((lot) => news.has(lot.code) || !item.lots.includes(lot.code))
      .map((lot) => news.get(lot.code) ?? lot);
    const known = new Set(lots.map((lot) => lot.code));
    const arrived = said.lots.filter((lot) => !known.has(lot.code) && lot.fruits.sound > 0);
    const freeCodes = this.view.freeCodes.filter((code) => !news.has(code));
    const planned = this.view.planned.filter((plan) => !news.has(plan.code));
    this.view = { ...this.view, lots: [...arrived, ...lots], freeCodes, planned };
    keep(KEPT_AS, this.view);
    this.#changed();
  }

  #changed() {
    this.dispatchEvent(new Event('change'));
  }
}

/** A lot as it will stand when everything that waits has gone out. */
export function withWaiting(lot, items) {
  const own = items.filter((item) => item.state !== 'refused' && item.lots.includes(lot.code));
  return own.reduce(applied, { ...lot, waiting: own.length });
}

function applied(lot, { kind, fields }) {
  const count = Number(fields.count ?? 0);
  const less = (part) => ({
    ...lot,
    fruits: {
      ...lot.fruits,
      sound: Math.max(0, lot.fruits.sound - count),
      free: Math.max(0, lot.fruits.free - count),
      [part]: lot.fruits[part] + count,
    },
  });
  switch (kind) {
    case 'moved':
      return { ...lot, place: fields.place };
    case 'culled':
      return less('lost');
    case 'used':
      return less('used');
    case 'recounted':
      return { ...lot, fruits: { ...lot.fruits, sound: count } };
    case 'weighed':
      return fields.fruit ? { ...lot, tags: weighedNow(lot.tags, fields) } : lot;
    default:
      return lot;
  }
}

/** The fruit that was weighed just now is the last to be weighed again. */
const weighedNow = (tags, { fruit, weight_g, tare_g = '0' }) => [
  ...tags.filter((tag) => tag.fruit !== fruit),
  { fruit, grams: Number(weight_g) - Number(tare_g), at: new Date().toISOString() },
];

export const book = new Book();

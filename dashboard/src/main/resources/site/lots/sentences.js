// What is shown of a lot, in words: its verdict, its fruits, what was said of it.
import { farmDay, grams, temperature } from '../lib/units.js';
import { words } from './words.js';

/** What a lot is called: its variety, or its type where it has none. */
export const nameOf = (lot) => lot.variety || lot.cropName;

/** What an entry says. @param {{ kind: string, fields: object }} entry */
export const saidOf = ({ kind, fields }) => {
  const words_ = words.said[kind];
  return typeof words_ === 'function' ? words_(fields, grams, temperature) : (words_ ?? kind);
};

/** What comes next, and when. */
export const expectedOf = ({ expected }, zone) =>
  expected === null
    ? ''
    : words.lot.expected(farmDay(expected.from, zone), farmDay(expected.to, zone), expected.what);

/** What to do with a lot, in a word or two; its phase beside it where it has one. */
export const verdictOf = (lot) =>
  lot.fruits.sound <= 0
    ? words.lots.nothingLeft
    : lot.verdict === null
      ? words.lots.noVerdict
      : [lot.verdict.words, lot.verdict.phase].filter(Boolean).join(': ');

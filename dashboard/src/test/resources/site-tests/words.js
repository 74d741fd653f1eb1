// What people read: every text of every page says something, whatever it is given.
import { plural, words as common } from '/lib/words.js';
import { equal, test } from './harness.js';

const FOLDERS = ['alarms', 'lots', 'placards', 'rooms', 'shed', 'tastings', 'varieties', 'you'];

/** Every text under a name, with a way to it. */
function* textsIn(words, at) {
  for (const [name, value] of Object.entries(words)) {
    const where = `${at}.${name}`;
    if (value !== null && typeof value === 'object') {
      yield* textsIn(value, where);
    } else {
      yield [where, value];
    }
  }
}

/** Takes any name that is asked of it, for a text that is given an entry's fields. */
const anything = (text) =>
  new Proxy({}, { get: (_, name) => (name === Symbol.toPrimitive ? () => text : text) });

for (const folder of FOLDERS) {
  test(`every text of ${folder} says something`, async () => {
    const { words } = await import(`/${folder}/words.js`);
    let seen = 0;
    for (const [where, value] of textsIn(words, folder)) {
      const text =
        typeof value === 'function' && where.startsWith('lots.said') && !where.endsWith('.of')
          ? value(anything('7'), String, String)
          : typeof value === 'function'
            ? value(...Array(value.length).fill(['7']))
            : value;
      equal([typeof text, text === String(text).trim(), text === ''], ['string', true, false], where);
      equal(/undefined|NaN|\[object| {2}/.test(text), false, `${where}: “${text}”`);
      seen += 1;
    }
    equal(seen > 20, true);
  });

  test(`${folder} has every text that all pages share`, async () => {
    const { words } = await import(`/${folder}/words.js`);
    Object.keys(common).forEach((part) => equal(part in words, true, part));
  });
}

test('one is one, and anything else is many', () => {
  equal([0, 1, 2, 1.5].map((n) => plural(n, 'fruit', 'fruits')), ['fruits', 'fruit', 'fruits', 'fruits']);
});

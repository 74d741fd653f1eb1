// A lot as it will stand when everything that waits on the phone has gone out.
import { withWaiting } from '/lots/book.js';
import { equal, test } from './harness.js';

const lot = { code: 'A1', place: 'porch', fruits: { sound: 10, free: 6, used: 1, lost: 0 }, tags: [] };
const said = (kind, fields, more = {}) => ({ kind, fields, lots: ['A1'], state: 'waiting', ...more });
const after = (...items) => withWaiting(lot, items);

test('what waits is applied in its order', () => {
  const { place, waiting } = after(said('moved', { place: 'shed' }), said('moved', { place: 'loft' }));
  equal([place, waiting], ['loft', 2]);
});

test('fruit that is eaten or lost is gone at once, and never less than none', () => {
  equal(after(said('used', { count: '4' })).fruits, { sound: 6, free: 2, used: 5, lost: 0 });
  equal(after(said('culled', { count: '12' })).fruits, { sound: 0, free: 0, used: 1, lost: 12 });
  equal(after(said('recounted', { count: '8' })).fruits.sound, 8);
});

test('what was refused, and what is another lot’s, changes nothing', () => {
  const other = said('moved', { place: 'loft' }, { lots: ['B2'] });
  const refused = said('moved', { place: 'loft' }, { state: 'refused' });
  equal(after(other, refused), { ...lot, waiting: 0 });
});

test('a fruit that was weighed just now is the last to be weighed again', () => {
  const weighed = (fruit) => said('weighed', { fruit, weight_g: '1500', tare_g: '300' });
  const { tags } = after(weighed('1'), weighed('2'), weighed('1'));
  equal(tags.map(({ fruit, grams }) => [fruit, grams]), [['2', 1200], ['1', 1200]]);
});

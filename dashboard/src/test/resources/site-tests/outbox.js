// What is noted on a phone goes out in order, once, and is not lost. The shed is played by `answers`.
import { equal, test } from './harness.js';

const WREN = { name: 'Wren', role: 'owner', csrfToken: 'of-this-session' };
let posted = [];
let answers = () => ({ lots: [] });
window.fetch = async (path, { method = 'GET', headers, body } = {}) => {
  if (method === 'GET') {
    return path === '/api/me' ? answer(200, WREN) : Promise.reject(new TypeError('no network'));
  }
  const request = { method, path, key: headers['Idempotency-Key'], ifMatch: headers['If-Match'], body: JSON.parse(body) };
  posted.push(request);
  const [status, said] = await answers(request);
  return answer(status, said);
};
const answer = (status, body) => new Response(JSON.stringify(body), { status });
const taken = async () => [201, { entries: [posted.length], lots: [] }];
const lost = () => Promise.reject(new TypeError('no network'));
const refused = async () => [422, { detail: 'There is no lot X9.' }];

localStorage.clear();
let opened = 0;

/** A page that is opened anew finds what the one before has kept. */
async function open() {
  posted = [];
  const { outbox } = await import(`/lots/outbox.js?opened=${(opened += 1)}`);
  return outbox;
}

const moved = (lot, seen = {}) => ({ kind: 'moved', lots: [lot], fields: { place: 'porch' }, seen });
const lotsOf = (requests) => requests.map(({ body }) => body.lots[0]);

/** Lets the outbox try again until something is so. */
async function until(outbox, isSo) {
  for (let turn = 0; turn < 400 && !isSo(); turn += 1) {
    outbox.flush();
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  equal(isSo(), true, 'what was waited for');
}

const isEmpty = (outbox) => until(outbox, () => outbox.items.length === 0);
const hasTried = (outbox) =>
  until(outbox, () => posted.length > 0 && outbox.items.every(({ state }) => state === 'waiting'));

test('what is noted goes out in the order in which it was noted, each under a key of its own', async () => {
  answers = taken;
  const outbox = await open();
  ['A1', 'B2', 'C3'].forEach((lot) => outbox.say(moved(lot)));
  await isEmpty(outbox);
  equal(lotsOf(posted), ['A1', 'B2', 'C3']);
  equal(new Set(posted.map(({ key }) => key)).size, 3);
});

test('without a network it waits on the phone, and one opened later sends it under the same key', async () => {
  answers = lost;
  const outbox = await open();
  outbox.say(moved('A1'));
  outbox.say(moved('B2'));
  await hasTried(outbox);
  equal([...new Set(lotsOf(posted))], ['A1'], 'the second does not overtake the first');
  const [{ key }] = posted;
  equal(JSON.parse(localStorage.getItem('rindward.outbox')).length, 2);

  answers = taken;
  const later = await open();
  await isEmpty(later);
  equal(lotsOf(posted), ['A1', 'B2']);
  equal(posted[0].key, key, 'a lost answer makes no double');
});

test('what is refused stays with its sentence, and does not hold up the next', async () => {
  answers = ({ body }) => (body.lots[0] === 'X9' ? refused() : taken());
  const outbox = await open();
  outbox.say(moved('X9'));
  outbox.say(moved('B2'));
  await until(outbox, () => outbox.waiting.length === 0);
  equal(lotsOf(posted), ['X9', 'B2']);
  equal(outbox.refused.map(({ sentence }) => sentence), ['There is no lot X9.']);
  outbox.drop(outbox.refused[0].key);
  equal(outbox.items, []);
});

test('who must sign in first loses nothing', async () => {
  answers = async () => [401, { detail: 'Sign in first.' }];
  const outbox = await open();
  outbox.say(moved('A1'));
  await until(outbox, () => outbox.needsSignIn);
  equal(outbox.waiting.length, 1);
  answers = taken;
  await isEmpty(outbox);
  equal([outbox.needsSignIn, outbox.items.length], [false, 0]);
});

test('what was noted on top of something that waited has seen what that made', async () => {
  answers = async ({ body }) => [201, { entries: [1], lots: body.lots.map((code) => ({ code, version: 8 })) }];
  const outbox = await open();
  outbox.say(moved('A1', { A1: 7 }));
  outbox.say(moved('A1', { A1: 7 }));
  await isEmpty(outbox);
  equal(posted.map(({ ifMatch }) => ifMatch), ['"A1-7"', '"A1-8"']);
});

test('how long ago is said, not when, for nobody trusts a phone’s clock', async () => {
  answers = lost;
  const outbox = await open();
  outbox.say(moved('A1'));
  await hasTried(outbox);
  outbox.items[0].enteredMs -= 90_000;
  answers = taken;
  await isEmpty(outbox);
  equal(posted.at(-1).body.agoSeconds, 90);
  equal(Object.keys(posted.at(-1).body), ['kind', 'lots', 'fields', 'agoSeconds']);
});

test('what has not gone out is undone on the phone; what has is taken back in the shed', async () => {
  answers = lost;
  const outbox = await open();
  outbox.say(moved('A1'));
  await hasTried(outbox);
  outbox.undo();
  equal(outbox.items, []);

  answers = async () => [201, { entries: [41], lots: [{ code: 'A1', version: 8 }] }];
  outbox.say(moved('A1'));
  await until(outbox, () => outbox.items.length === 0 && outbox.last.said !== null);
  outbox.undo();
  await isEmpty(outbox);
  equal(posted.at(-1).path, '/api/lots/withdrawals');
  equal([posted.at(-1).body, posted.at(-1).ifMatch], [{ entries: [41] }, '"A1-8"']);
});

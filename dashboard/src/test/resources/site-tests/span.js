// Which stretch of time a room's page shows.
import { SPANS, moved, queryOf, scaled, stretchOf } from '/rooms/span.js';
import { equal, test } from './harness.js';

const MINUTE = 60_000;
const DAY = 1440 * MINUTE;
const NOW = Date.UTC(2026, 9, 3, 9, 15);
const of = (query) => stretchOf(new URLSearchParams(query), NOW);
const lengthOf = ({ fromMs, toMs }) => toMs - fromMs;

test('a named span ends now', () => {
  equal(of('span=week'), { name: 'week', within: 'week', fromMs: NOW - 7 * DAY, toMs: NOW });
});

test('a day is shown where the address names no span that there is', () => {
  for (const query of ['', 'span=', 'span=year', 'span=constructor', 'from=x&to=y', 'from=-5&to=9', 'from=9&to=9']) {
    equal(of(query).name, 'day', query);
  }
});

test('what somebody chose has no name, knows where to come back to, and is at most 400 days long', () => {
  const { fromMs, toMs } = { fromMs: NOW - DAY, toMs: NOW - MINUTE };
  equal(of(`from=${fromMs}&to=${toMs}&within=season`), { name: null, within: 'season', fromMs, toMs });
  equal(lengthOf(of(`from=${NOW - 900 * DAY}&to=${NOW}`)), 400 * DAY);
});

test('the address of a stretch leads back to it', () => {
  for (const query of ['?span=season', '?span=day&beside=Keeping+room', `?from=${NOW - DAY}&to=${NOW}&within=week`]) {
    const stretch = of(query);
    equal(queryOf(stretch, new URLSearchParams(query).get('beside') ?? ''), query);
  }
});

test('nothing is moved into the future', () => {
  const day = { fromMs: NOW - DAY, toMs: NOW };
  equal(moved(day, 0.5, NOW), day);
  equal(moved(day, -0.5, NOW), { fromMs: NOW - 1.5 * DAY, toMs: NOW - 0.5 * DAY });
  equal(moved(moved(day, -0.25, NOW), 5, NOW), day);
});

test('what lies under the finger stays there, closer or wider', () => {
  const around = NOW - 0.75 * DAY;
  for (const factor of [0.5, 0.9, 1.5]) {
    const next = scaled({ fromMs: NOW - DAY, toMs: NOW - DAY / 2 }, factor, around, NOW);
    equal(Math.round((around - next.fromMs) / MINUTE), Math.round(lengthOf(next) / 2 / MINUTE), factor);
  }
});

test('a stretch is never shorter than five minutes, longer than 400 days, or ahead of now', () => {
  const day = { fromMs: NOW - DAY, toMs: NOW };
  equal(lengthOf(scaled(day, 1e-9, NOW - DAY / 2, NOW)), 5 * MINUTE);
  const widest = scaled(day, 1e9, NOW - DAY / 2, NOW);
  equal([lengthOf(widest), widest.toMs <= NOW], [400 * DAY, true]);
  equal(SPANS.season < lengthOf(widest), true);
});

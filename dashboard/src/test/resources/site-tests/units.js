// Numbers and times as text. The pound is the international one of 1959, 0.45359237 kg, and degrees F are
// 1.8 times degrees C and 32 more (both NIST Special Publication 811, appendix B); the days on which the clocks
// change are those of Directive 2000/84/EC.
import * as written from '/lib/units.js';
import { equal, test } from './harness.js';

const { units } = written;
const plain = (text) => text.replaceAll('\u00a0', ' ');
const inEuropesUnits = () => units.choose({ temperature: 'C', mass: 'kg' });
const inAmericas = () => units.choose({ temperature: 'F', mass: 'lb' });
const BERLIN = 'Europe/Berlin';

test('a reader in Europe begins with C and kg, and what is chosen is remembered', () => {
  localStorage.clear();
  equal([units.temperature, units.mass], ['C', 'kg']);
  inAmericas();
  equal(JSON.parse(localStorage.getItem('rindward.units')), { temperature: 'F', mass: 'lb' });
});

test('a temperature is in the reader’s degrees, to a tenth', () => {
  inEuropesUnits();
  equal(plain(written.temperature(27.44)), '27.4 °C');
  equal(plain(written.temperature(-0.04)), '0.0 °C', 'no frost of nothing');
  inAmericas();
  equal([0, 100, -40, 27.4].map((c) => plain(written.temperature(c))), ['32.0 °F', '212.0 °F', '-40.0 °F', '81.3 °F']);
});

test('a limit has a tenth only where it says something', () => {
  inEuropesUnits();
  equal([10, 12.5].map(written.temperatureLimit), ['10', '12.5']);
  inAmericas();
  equal([10, 13].map(written.temperatureLimit), ['50', '55.4']);
});

test('every temperature in a sentence of the shed is told in the reader’s degrees, as exact as it was', () => {
  inAmericas();
  const said = 'It is 27.4 C, below 26 to 29 C; 12.5 kg of K4C and -10 C outside (0 C).';
  equal(plain(written.told(said)), 'It is 81.3 °F, below 79 to 84 °F; 12.5 kg of K4C and 14 °F outside (32 °F).');
  inEuropesUnits();
  equal(plain(written.told('at 10 to 12.5 C, 3 Cups')), 'at 10 to 12.5 °C, 3 Cups');
});

test('a mass is in the reader’s unit', () => {
  inEuropesUnits();
  equal(plain(written.grams(1234)), '1.234 kg', 'a weighing keeps its grams');
  inAmericas();
  equal([0.45359237, 10].map((kg) => plain(written.mass(kg))), ['1.0 lb', '22.0 lb']);
});

test('what is typed in the reader’s unit is what it says', () => {
  inAmericas();
  equal([written.typedGrams('1'), written.typedGrams('10')], [454, 4536]);
  equal([written.typedC('212'), written.typedC('-40')], [100, -40]);
  equal(Number.isNaN(written.typedGrams('')), true);
  inEuropesUnits();
  equal([written.typedGrams('1.2345'), written.typedC('7.5')], [1235, 7.5]);
});

test('what was typed comes back as it was typed', () => {
  inAmericas();
  equal(plain(written.grams(written.typedGrams('3.42'))), '3.42 lb');
  const heat = Math.round(written.typedC('375') * 1000) / 1000;
  equal(plain(written.ovenTemperature(heat)), '375 °F');
  inEuropesUnits();
  equal(plain(written.grams(written.typedGrams('1.407'))), '1.407 kg');
  equal(plain(written.ovenTemperature(190)), '190 °C');
});

test('a value that is judged outside is not printed inside', () => {
  inEuropesUnits();
  const humidity = (value) => written.besideRange(value, 75, 80, 0);
  equal([74.6, 74.97, 75, 80, 80.4, 81].map(humidity), ['74.6', '74.97', '75', '80', '80.4', '81']);
  equal(written.besideRange(50.2, null, null, 0), '50');
  const warmth = (value) => written.besideRange(value, 10, 13, 1, written.temperatureValue);
  equal([9.96, 9.9, 13.04].map(warmth), ['9.96', '9.9', '13.04']);
});

test('every moment is by the farm’s clock, and another zone is only named where it differs', () => {
  const noon = Date.UTC(2026, 6, 1, 12);
  written.useFarmZone('America/New_York');
  equal(written.moment(noon), '1 Jul, 8:00');
  equal(written.otherZone(noon), 'America/New_York');
  written.useFarmZone(Intl.DateTimeFormat().resolvedOptions().timeZone);
  equal(written.otherZone(noon), null);
});

test('nothing is done before it is done', () => {
  equal([0.999, 1].map((part) => plain(written.share(part))), ['99 %', '100 %']);
});

test('a length of time is in the one unit that suits it, and is never rounded up', () => {
  const texts = [3600, 47.9 * 3600, 48 * 3600, 86_400 * 2.9].map(written.duration);
  equal(texts, ['1 hour', '47 hours', '2 days', '2 days']);
  equal(written.duration(3599).startsWith('59 '), true);
});

test('what has only just been is no number of seconds', () => {
  equal([written.ago(19), written.ago(20).startsWith('20 ')], ['just now', true]);
  equal(written.ago(59).startsWith('50 '), true, 'no finer than ten seconds');
});

test('a day is the farm’s own, also when the clocks change', () => {
  const [before, after] = [Date.UTC(2026, 9, 25, 0, 30), Date.UTC(2026, 9, 25, 1, 30)];
  equal([before, after].map((ms) => written.farmTime(ms, BERLIN)), ['2:30', '2:30']);
  equal(
    [Date.UTC(2026, 9, 24, 22), Date.UTC(2026, 9, 25, 22), Date.UTC(2026, 9, 25, 23)].map((ms) =>
      written.isFarmMidnight(ms, BERLIN),
    ),
    [true, false, true],
  );
  equal(written.farmDate(Date.UTC(2026, 11, 31, 23, 30), BERLIN), '1 Jan 2027');
});

test('a day is told with its year where it may be mistaken', () => {
  const year = String(new Date(Date.now() - 310 * 86_400_000).getFullYear());
  equal(written.farmDay(Date.now() - 310 * 86_400_000, 'UTC').endsWith(year), true);
  equal(/\d{4}/.test(written.farmDay(Date.now() - 200 * 86_400_000, 'UTC')), false);
});

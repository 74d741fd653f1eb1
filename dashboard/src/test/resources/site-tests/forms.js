// Every form of a lot, with every order of two taps: what was typed is in what is said, or stands in the
// form still. Only leaving the form gives it up.
import { book } from '/lots/book.js';
import { outbox } from '/lots/outbox.js';
import { NumberPad } from '/lots/number-pad.js';
import { SaySheet } from '/lots/say-sheet.js';
import { equal, test } from './harness.js';

const TYPED = 'upper loft';
const FIGURE = '3.25';
const LEAVES = ['Leave it'];

const lot = {
  code: 'K4T',
  version: 7,
  crop: 'kabocha',
  cropName: 'Kabocha',
  variety: 'Winterglut',
  place: 'curing',
  fruits: { sound: 9, free: 9, used: 0, lost: 0, reserved: {} },
  tags: [{ fruit: 'tag 1', grams: 1400, at: '2026-10-01T08:00:00Z' }],
};

const entry = {
  id: 3,
  kind: 'moved',
  at: '2026-10-01T08:00:00Z',
  fields: { place: 'curing', note: 'by the door' },
};

book.view = {
  at: '2026-10-02T08:00:00Z',
  zone: 'UTC',
  lots: [lot],
  planned: [],
  crops: [{ key: 'kabocha', name: 'Kabocha' }],
  places: ['curing', 'storage'],
  rooms: ['curing', 'storage'],
  freeCodes: ['A1', 'A2'],
  words: { causes: ['rot'], purposes: ['kitchen', 'seed'], grades: ['ripe', 'green'] },
};

customElements.define('number-pad', NumberPad);
customElements.define('say-sheet', SaySheet);

const said = [];
outbox.say = (entry) => said.push(JSON.stringify(entry.fields)) > 0;
outbox.correct = (id, of, fields) => said.push(JSON.stringify(fields)) > 0;
outbox.withdraw = () => said.push('taken back');

const FORMS = ['moved', 'weighed', 'culled', 'used', 'reserved', 'recounted', 'noted', 'attested', 'harvested', 'corrected'];

const open = async (kind) => {
  said.length = 0;
  const sheet = document.createElement('say-sheet');
  sheet.asked = kind === 'harvested' ? { kind, lots: [] } : { kind, lots: ['K4T'], entry };
  document.body.replaceChildren(sheet);
  await settled(sheet);
  return sheet;
};

const settled = async (sheet) => {
  await sheet.updateComplete;
  await new Promise((resolve) => setTimeout(resolve));
  await sheet.updateComplete;
};

const buttons = (sheet) =>
  [...sheet.querySelectorAll('button')].filter(
    (button) => !button.closest('number-pad') && !button.disabled,
  );

/** Types into every field that stands open, and returns what was typed. */
const type = async (sheet) => {
  const fields = [...sheet.querySelectorAll('textarea, input')].filter(
    (field) => field.type !== 'datetime-local',
  );
  const typed = [];
  for (const field of fields) {
    const isFigure = field.name === 'figure' || field.inputMode === 'numeric';
    const value = isFigure ? (sheet.asked.kind === 'weighed' ? FIGURE : '3') : TYPED;
    field.value = value;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    typed.push(isFigure && sheet.asked.kind === 'weighed' ? '3250' : value);
    await settled(sheet);
  }
  return typed;
};

const standsIn = (sheet) =>
  [...sheet.querySelectorAll('textarea, input')].map((field) => field.value).join(' ') +
  JSON.stringify([sheet.draft, sheet.fields]);

for (const kind of FORMS) {
  test(`${kind}: no order of taps loses what was typed`, async () => {
    const labels = [null, ...buttons(await open(kind)).map((button) => button.textContent.trim())];
    const lost = [];
    for (const first of labels) {
      const opened = await open(kind);
      buttons(opened).find((button) => button.textContent.trim() === first)?.click();
      await settled(opened);
      const seconds = buttons(opened).map((button) => button.textContent.trim());
      for (const second of said.length > 0 || !opened.querySelector('dialog').open ? [] : seconds) {
        const sheet = await open(kind);
        buttons(sheet).find((button) => button.textContent.trim() === first)?.click();
        await settled(sheet);
        const select = sheet.querySelector('select[name=what]');
        if (select) {
          select.value = '0';
          select.dispatchEvent(new Event('change'));
          await settled(sheet);
        }
        const typed = await type(sheet);
        const tapped = buttons(sheet).find((button) => button.textContent.trim() === second);
        tapped?.click();
        await settled(sheet);
        const kept = said.join(' ') + (sheet.querySelector('dialog').open ? standsIn(sheet) : '');
        if (tapped && !LEAVES.includes(second)) {
          typed
            .filter((what) => !kept.includes(what) && !kept.includes(what.replace('3250', '3.25')))
            .forEach((what) => lost.push(`${first}, then ${second}: ${what}`));
        }
      }
    }
    equal(lost, [], 'what was lost');
  });
}

test('the last weight is noted by whoever says that it was the last', async () => {
  const sheet = await open('weighed');
  for (const label of ['Note it, next fruit', 'Finished']) {
    await type(sheet);
    buttons(sheet)
      .find((button) => button.textContent.trim() === label)
      .click();
    await settled(sheet);
  }
  equal(said.length, 2, 'weights noted');
  equal(sheet.querySelector('dialog').open, false, 'still open');
});

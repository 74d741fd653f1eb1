// The figures of a lot: its cure, its account, its fruits, weights, survival, tastings and places.
// Three-valued figures show one number and open to three.
import { html, nothing } from 'lit';
import { count, farmDay, figure, grams, hours, percent, share } from '../lib/units.js';
import { words } from './words.js';

const text = words.lot;
const DAY_MS = 86_400_000;

/** How far its cure is, and how sure that is. */
export const curesAs = (cure, zone) =>
  html`<details class="account">
    <summary>
      ${cure.endedAt !== null && cure.measured === 0
        ? text.cureUnmeasured(farmDay(cure.endedAt, zone))
        : html`${text.cureLine(share(cure.measured))}${cure.endedAt === null
            ? nothing
            : `, ${text.cureEnded(farmDay(cure.endedAt, zone))}`}`}
    </summary>
    <dl>
      ${row(text.certain, share(cure.certain), text.certainNote)}
      ${row(text.measured, share(cure.measured), text.measuredNote)}
      ${row(text.possible, share(cure.possible), text.possibleNote)}
    </dl>
  </details>`;

export const accounts = ({ accounts: all }) =>
  all.length === 0
    ? nothing
    : html`<section aria-labelledby="account-heading">
        <h2 id="account-heading">${text.account}</h2>
        ${all.map(account)}
      </section>`;

const account = (a) => {
  const part = (value) => (a.elapsedHours > 0 ? (value / a.elapsedHours) * 100 : 0);
  const out = ['tooCold', 'tooWarm', 'tooDry', 'tooDamp'].filter((how) => a[how].measured > 0);
  return html`<details class="account">
    <summary>
      ${a.unknownHours >= a.elapsedHours
        ? text.nothingMeasured(hours(a.elapsedHours), text.stage[a.stage])
        : text.inRange(hours(a.inRange.measured), hours(a.elapsedHours), text.stage[a.stage])}
    </summary>
    <svg class="account-line" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
      <rect class="all" width="100" height="8" />
      <rect class="inside" width=${part(a.inRange.measured)} height="8" />
      <rect
        class="outside"
        x=${part(a.inRange.measured)}
        width=${part(a.outOfRangeHours)}
        height="8"
      />
    </svg>
    <dl>
      ${row(text.certain, hours(a.inRange.certain), text.certainNote)}
      ${row(text.measured, hours(a.inRange.measured), text.measuredNote)}
      ${row(text.possible, hours(a.inRange.possible), text.possibleNote)}
      ${row(text.outOfRange, hours(a.outOfRangeHours))}
      ${out.map((how) => row(text[how], hours(a[how].measured)))}
      ${row(text.notMeasured, hours(a.unknownHours), text.notMeasuredNote)}
    </dl>
  </details>`;
};

export const fruits = ({ fruits: all }) =>
  html`<section aria-labelledby="fruits-heading">
    <h2 id="fruits-heading">${text.fruits}</h2>
    <dl class="figures">
      ${['harvested', 'sound', 'free', 'used', 'lost', 'unaccounted']
        .filter((part) => all[part] !== 0 || part === 'sound')
        .map((part) => row(text.fruit[part], count(all[part])))}
      ${Object.entries(all.reserved).map(([purpose, n]) =>
        row(text.setAside(words.purposes[purpose] ?? purpose), count(n)),
      )}
    </dl>
  </section>`;

export const weights = ({ weights: all, weightSentence, lot }) =>
  html`<section aria-labelledby="weights-heading">
    <h2 id="weights-heading">${text.weights}</h2>
    ${all.length === 0 ? html`<p class="aside">${text.noWeights}</p>` : nothing}
    ${weightSentence === null ? nothing : html`<p>${weightSentence}</p>`}
    ${all.some(({ points }) => points.length > 1)
      ? html`<lot-curve
          label=${text.lossLabel}
          unit=" %"
          .lines=${all
            .filter(({ points }) => points.length > 1)
            .map(({ points }) => points.map((p) => [daysSince(lot, p.at), p.lossPercent]))}
        ></lot-curve>`
      : nothing}
    <dl class="figures">
      ${all.map(({ fruit, count: n, points }) => {
        const last = points[points.length - 1];
        const lost =
          last.lossPercent < 0
            ? text.gained(percent(-last.lossPercent))
            : text.lost(percent(last.lossPercent));
        return row(
          text.series(fruit, count(n)),
          grams(last.netGrams),
          points.length > 1 ? lost : undefined,
        );
      })}
    </dl>
  </section>`;

export const survival = ({ survival: kept }) =>
  kept === null
    ? nothing
    : html`<section aria-labelledby="survival-heading">
        <h2 id="survival-heading">${text.survival}</h2>
        <p>${kept.sentence}</p>
        ${kept.steps.length === 0
          ? nothing
          : html`<lot-curve
              label=${text.survivalLabel}
              step
              high="100"
              unit=" %"
              .lines=${[
                [
                  [0, 100],
                  ...kept.steps.map(({ day, share: sound }) => [day, sound * 100]),
                  [kept.lastDay, kept.steps[kept.steps.length - 1].share * 100],
                ],
              ]}
            ></lot-curve>`}
      </section>`;

export const tastings = ({ tastings: all, zone }) =>
  html`<section aria-labelledby="tastings-heading">
    <h2 id="tastings-heading">${text.tastings}</h2>
    ${all.length === 0
      ? html`<p class="aside">${text.noTastings}</p>`
      : html`<ul class="plain">
          ${all.map(
            (taste) =>
              html`<li>
                <b>${farmDay(taste.at, zone)}</b>
                ${[
                  taste.liking === null ? '' : text.liking(figure(taste.liking)),
                  taste.words,
                  taste.session === null ? text.kitchen : text.session(taste.session),
                ]
                  .filter(Boolean)
                  .join(', ')}
                ${taste.notCounted === null
                  ? nothing
                  : html`<small>${text.notCounted(taste.notCounted)}</small>`}
              </li>`,
          )}
        </ul>`}
  </section>`;

/** Over age, once there are ages to compare. */
export const liking = ({ liking: all, lot }) =>
  all.tastes.length < 2
    ? nothing
    : html`<section aria-labelledby="liking-heading">
        <h2 id="liking-heading">${text.likingHeading}</h2>
        ${all.sentence === null ? nothing : html`<p>${all.sentence}</p>`}
        <liking-plot code=${lot.code} .liking=${all}></liking-plot>
      </section>`;

export const stays = ({ stays: all, zone }) =>
  html`<section aria-labelledby="stays-heading">
    <h2 id="stays-heading">${text.stays}</h2>
    <dl class="figures">
      ${all.map(({ place, from, to, measured }) =>
        row(
          place,
          to === null
            ? text.sinceDay(farmDay(from, zone))
            : text.until(farmDay(from, zone), farmDay(to, zone)),
          measured ? undefined : text.unmeasured,
        ),
      )}
    </dl>
  </section>`;

const daysSince = (lot, at) =>
  Math.max(0, (Date.parse(at) - Date.parse(lot.harvestedAt)) / DAY_MS);

const row = (name, value, note) =>
  html`<div>
    <dt>${name}${note ? html`<small>${note}</small>` : nothing}</dt>
    <dd>${value}</dd>
  </div>`;

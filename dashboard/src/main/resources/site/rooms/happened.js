// What happened in a room, in words: beside the moment looked at, and all of it in a list.
import { html, nothing } from 'lit';
import { farmMoment } from '../lib/units.js';
import { words } from './words.js';

const text = words.room;
const MOST_NOW = 3;

/**
 * What happened at the moment looked at, below the chart, which must not move from under a finger.
 */
export const happenedNow = (marks) =>
  marks.length === 0
    ? nothing
    : html`<div class="happened-now" role="status">
        ${marks
          .slice(0, MOST_NOW)
          .map((mark) => html`<p data-kind=${mark.kind}>${sentenceOf(mark)}</p>`)}
        ${marks.length > MOST_NOW
          ? html`<p class="aside">${text.moreHappened(marks.length - MOST_NOW)}</p>`
          : nothing}
      </div>`;

/**
 * Everything that is marked, the newest first.
 * @param {(ms: number) => void} look shows a moment on the charts
 */
export const happened = (marks, zone, look) =>
  marks.length === 0
    ? html`<p class="aside">${text.nothingHappened}</p>`
    : html`<folded-list
        .summary=${text.happened(marks.length)}
        .list=${() =>
          html`<ol>
            ${[...marks].reverse().map(
              (mark) =>
                html`<li>
                  <button type="button" class="when" @click=${() => look(mark.fromMs)}>
                    ${farmMoment(mark.fromMs, zone)}
                  </button>
                  <span>${sentenceOf(mark)}</span>
                </li>`,
            )}
          </ol>`}
      ></folded-list>`;

const sentenceOf = ({ sentence, lots }) =>
  html`${sentence}${lots.length === 1
    ? html` <a href="/lot/${lots[0]}">${text.toLot}</a>`
    : nothing}`;

// <shed-record></shed-record> tells what of the shed is on record and hands it over: the copy of every night,
// files to take away, and which outputs somebody has seen at work.
import { html, nothing } from 'lit';
import { AskingElement } from '../lib/asking-element.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { megabytes, moment, told } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { partName } from '../rooms/part-name.js';
import { words } from './words.js';

const text = words.record;
const LONGEST_DAYS = 400;

export class ShedRecord extends AskingElement {
  path = '/api/record';

  constructor() {
    super();
    new Watch(this, me);
  }

  shown({ copiedAt, copyBytes, schema, entryVersion, newerEntries, tried, proofs }) {
    const rooms = live.view?.rooms ?? [];
    return html`<section class="parts record" aria-labelledby="record-heading">
      <h2 id="record-heading">${text.heading}</h2>
      <p>${copiedAt === null ? text.noCopy : text.copied(moment(copiedAt), megabytes(copyBytes))}</p>
      <p class="aside">${text.versions(schema, entryVersion)}</p>
      ${newerEntries === 0 ? nothing : html`<p>${text.newer(newerEntries)}</p>`}
      <ul class="files">
        <li><a download href="/api/record/lots.csv">${text.lots}</a></li>
        ${rooms.map(
          ({ name }) =>
            html`<li><a download href=${samplesOf(name)}>${text.samples(name)}</a></li>`,
        )}
        ${me.isOwner && copiedAt !== null
          ? html`<li><a download href="/api/record/copy.db">${text.copy}</a></li>`
          : nothing}
      </ul>
      <h3>${text.tried}</h3>
      ${tried.length === 0
        ? html`<p class="aside">${text.nobody}</p>`
        : html`<ul class="tried">
            ${tried.map(
              ({ room, output, at, by }) =>
                html`<li>${text.seen(partName(output, room), room, moment(at), by)}</li>`,
            )}
          </ul>`}
      ${proofs.length === 0 ? nothing : protection(proofs)}
    </section>`;
  }
}

/** What must be shown once a year, with the last two results side by side. */
const protection = (proofs) =>
  html`<h3>${text.protection}</h3>
    <ul class="tried proofs">
      ${proofs.map(
        ({ room, what, results, warning }) =>
          html`<li>
            ${warning === null
              ? html`<strong>${text.shown(room, what)}</strong>`
              : html`<p class="problem"><strong>${words.page.attention}:</strong> ${warning}</p>`}
            ${results.slice(0, 2).map((result, i) => html`<p class="aside">${i === 0 ? '' : `${text.before} `}${told(result)}</p>`)}
          </li>`,
      )}
    </ul>`;

const samplesOf = (room) =>
  `/api/rooms/${encodeURIComponent(room)}/samples.csv?days=${LONGEST_DAYS}`;

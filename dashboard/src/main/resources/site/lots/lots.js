// Defines the elements of the lots page.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { LotRow } from './lot-row.js';
import { LotsPage } from './lots-page.js';
import { OutboxBar } from './outbox-bar.js';

const ELEMENTS = { 'lot-row': LotRow, 'outbox-bar': OutboxBar, 'lots-page': LotsPage };

export const define = () => defined(ELEMENTS);

export const views = {
  lots: () => html`<lots-page></lots-page>`,
  /** What a placard of a place that is no room leads to: what lies there. */
  place: (name) => html`<lots-page .place=${name}></lots-page>`,
};

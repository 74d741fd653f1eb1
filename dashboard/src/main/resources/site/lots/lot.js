// Defines the elements of the lot page.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { LikingPlot } from './liking-plot.js';
import { LotCurve } from './lot-curve.js';
import { LotPage } from './lot-page.js';
import { OutboxBar } from './outbox-bar.js';

const ELEMENTS = {
  'liking-plot': LikingPlot,
  'lot-curve': LotCurve,
  'outbox-bar': OutboxBar,
  'lot-page': LotPage,
};

export const define = () => defined(ELEMENTS);

export const views = {
  lot: (code) => html`<lot-page code=${code}></lot-page>`,
};

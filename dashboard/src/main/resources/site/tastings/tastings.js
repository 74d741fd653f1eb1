// Defines the elements of the tastings pages.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { CookForm } from './cook-form.js';
import { DotPlot } from './dot-plot.js';
import { KitchenSheet } from './kitchen-sheet.js';
import { PlanForm } from './plan-form.js';
import { TastePage } from './taste-page.js';
import { TastingPage } from './tasting-page.js';
import { TastingResult } from './tasting-result.js';
import { TastingsPage } from './tastings-page.js';

const ELEMENTS = {
  'cook-form': CookForm,
  'dot-plot': DotPlot,
  'kitchen-sheet': KitchenSheet,
  'plan-form': PlanForm,
  'tasting-result': TastingResult,
  'tastings-page': TastingsPage,
  'tasting-page': TastingPage,
  'taste-page': TastePage,
};

export const define = () => defined(ELEMENTS);

export const views = {
  tastings: () => html`<tastings-page></tastings-page>`,
  tasting: (name) => html`<tasting-page name=${name}></tasting-page>`,
  /** A taster's own page: nothing around it, so that nothing there tells what is tasted. */
  taste: (secret) => html`<taste-page secret=${secret}></taste-page>`,
};

// Defines the elements of the varieties page.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { DecisionForm } from './decision-form.js';
import { VarietiesPage } from './varieties-page.js';

const ELEMENTS = { 'decision-form': DecisionForm, 'varieties-page': VarietiesPage };

export const define = () => defined(ELEMENTS);

export const views = {
  varieties: () => html`<varieties-page></varieties-page>`,
};

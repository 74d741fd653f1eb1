// Defines the element of the placards page.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { PlacardsPage } from './placards-page.js';

export const define = () => defined({ 'placards-page': PlacardsPage });

export const views = {
  placards: () => html`<placards-page></placards-page>`,
};

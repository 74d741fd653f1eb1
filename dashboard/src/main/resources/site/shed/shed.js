// Defines the elements of the shed page.
import { html } from 'lit';
import { ShedPage } from './shed-page.js';
import { ShedRecord } from './shed-record.js';
import { SwitchDialog } from './switch-dialog.js';

export function define() {
  customElements.define('switch-dialog', SwitchDialog);
  customElements.define('shed-record', ShedRecord);
  customElements.define('shed-page', ShedPage);
}

export const views = {
  shed: () => html`<shed-page></shed-page>`,
};

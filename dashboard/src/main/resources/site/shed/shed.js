// Defines the elements of the shed page.
import { ShedPage } from './shed-page.js';
import { ShedRecord } from './shed-record.js';
import { SwitchDialog } from './switch-dialog.js';

export function defineShed() {
  customElements.define('switch-dialog', SwitchDialog);
  customElements.define('shed-record', ShedRecord);
  customElements.define('shed-page', ShedPage);
}

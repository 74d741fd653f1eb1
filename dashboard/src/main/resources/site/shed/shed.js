// Defines the elements of the shed page.
import { ShedPage } from './shed-page.js';
import { SwitchDialog } from './switch-dialog.js';

export function defineShed() {
  customElements.define('switch-dialog', SwitchDialog);
  customElements.define('shed-page', ShedPage);
}

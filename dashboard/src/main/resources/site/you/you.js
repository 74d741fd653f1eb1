// Defines the elements of the page on which people sign in and say who may do what.
import { html } from 'lit';
import { FarmPeople } from './farm-people.js';
import { OwnTokens } from './own-tokens.js';
import { SignInForm } from './sign-in-form.js';
import { YouPage } from './you-page.js';

export function define() {
  customElements.define('sign-in-form', SignInForm);
  customElements.define('own-tokens', OwnTokens);
  customElements.define('farm-people', FarmPeople);
  customElements.define('you-page', YouPage);
}

export const views = {
  you: () => html`<you-page></you-page>`,
};

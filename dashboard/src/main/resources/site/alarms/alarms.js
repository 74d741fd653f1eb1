// Defines the elements of the alarms page.
import { html } from 'lit';
import { AlarmCard } from './alarm-card.js';
import { AlarmHistory } from './alarm-history.js';
import { AlarmRules } from './alarm-rules.js';
import { AlarmsPage } from './alarms-page.js';
import { LockOut } from './lock-out.js';

export function define() {
  customElements.define('alarm-card', AlarmCard);
  customElements.define('alarm-history', AlarmHistory);
  customElements.define('alarm-rules', AlarmRules);
  customElements.define('alarms-page', AlarmsPage);
  customElements.define('lock-out', LockOut);
}

export const views = {
  alarms: () => html`<alarms-page></alarms-page>`,
};

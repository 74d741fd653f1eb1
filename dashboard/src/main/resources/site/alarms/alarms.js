// Defines the elements of the alarms page.
import { AlarmCard } from './alarm-card.js';
import { AlarmHistory } from './alarm-history.js';
import { AlarmRules } from './alarm-rules.js';
import { AlarmsPage } from './alarms-page.js';

export function defineAlarms() {
  customElements.define('alarm-card', AlarmCard);
  customElements.define('alarm-history', AlarmHistory);
  customElements.define('alarm-rules', AlarmRules);
  customElements.define('alarms-page', AlarmsPage);
}

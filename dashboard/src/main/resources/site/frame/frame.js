// Defines what surrounds every page.
import { LiveLine } from './live-line.js';
import { ShedApp } from './shed-app.js';
import { StaleBanner } from './stale-banner.js';
import { UnitSwitch } from './unit-switch.js';

export function defineFrame() {
  customElements.define('live-line', LiveLine);
  customElements.define('stale-banner', StaleBanner);
  customElements.define('unit-switch', UnitSwitch);
  customElements.define('shed-app', ShedApp);
}

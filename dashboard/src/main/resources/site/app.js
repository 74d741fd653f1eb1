// Starts the site: opens the line to the shed, then defines what surrounds its pages.
import { defineFrame } from './frame/frame.js';
import { pageOf } from './frame/pages.js';
import { live } from './lib/live.js';
import { me } from './lib/me.js';
import { keepForOffline } from './lib/offline.js';
import { route } from './lib/route.js';

live.start();
route.start();
// One drawing is quicker than two: the frame waits for its page, which is on its way already.
pageOf(route.page).load().catch(() => {}).then(defineFrame);
me.load()
  .catch(() => {}) // Not to know who reads is to show what anybody may see.
  .finally(() => me.addEventListener('change', () => live.reconnect()));
live.addEventListener('change', () => live.isBackAfter(me.failure) && me.load().catch(() => {}));
keepForOffline();

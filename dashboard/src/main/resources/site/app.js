// Starts the site: defines what surrounds its pages, then opens the line to the shed.
import { defineFrame } from './frame/frame.js';
import { live } from './lib/live.js';
import { me } from './lib/me.js';
import { keepForOffline } from './lib/offline.js';
import { route } from './lib/route.js';

route.start();
defineFrame();
live.start();
me.load()
  .catch(() => {}) // Not to know who reads is to show what anybody may see.
  .finally(() => me.addEventListener('change', () => live.reconnect()));
keepForOffline();

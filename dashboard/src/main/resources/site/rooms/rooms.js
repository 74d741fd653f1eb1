// Defines the elements of the rooms page.
import { html } from 'lit';
import { OpenAlarms } from '../alarms/open-alarms.js';
import { RoomSheet } from './room-sheet.js';
import { RoomsPage } from './rooms-page.js';
import { ShelfGauge } from './shelf-gauge.js';

export function define() {
  customElements.define('open-alarms', OpenAlarms);
  customElements.define('shelf-gauge', ShelfGauge);
  customElements.define('room-sheet', RoomSheet);
  customElements.define('rooms-page', RoomsPage);
}

export const views = {
  now: () => html`<rooms-page></rooms-page>`,
};

// Defines the elements of the rooms page.
import { OpenAlarms } from '../alarms/open-alarms.js';
import { RoomSheet } from './room-sheet.js';
import { RoomsPage } from './rooms-page.js';
import { ShelfGauge } from './shelf-gauge.js';

export function defineRooms() {
  customElements.define('open-alarms', OpenAlarms);
  customElements.define('shelf-gauge', ShelfGauge);
  customElements.define('room-sheet', RoomSheet);
  customElements.define('rooms-page', RoomsPage);
}

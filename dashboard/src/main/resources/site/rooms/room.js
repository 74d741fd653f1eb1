// Defines the elements of the room page, and fetches the library's style sheet with them.
import { AirChart } from './air-chart.js';
import { OutputStrips } from './output-strips.js';
import { RoomPage } from './room-page.js';

export function defineRoom() {
  const sheet = document.createElement('link');
  sheet.rel = 'stylesheet';
  sheet.href = '/lib/uplot/1.6.30/dist/uPlot.min.css';
  document.head.append(sheet);
  if (customElements.get('air-chart') === undefined) {
    customElements.define('air-chart', AirChart);
  }
  customElements.define('output-strips', OutputStrips);
  customElements.define('room-page', RoomPage);
}

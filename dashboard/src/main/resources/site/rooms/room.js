// Defines the elements of the room page.
import { html } from 'lit';
import { defined } from '../lib/defined.js';
import { AirChart, fetchPlots } from './air-chart.js';
import { FoldedList } from './folded-list.js';
import { OutputStrips } from './output-strips.js';
import { RoomPage } from './room-page.js';

const ELEMENTS = {
  'air-chart': AirChart,
  'folded-list': FoldedList,
  'output-strips': OutputStrips,
  'room-page': RoomPage,
};

export function define() {
  fetchPlots(); // On its way while the shed is asked.
  defined(ELEMENTS);
}

export const views = {
  room: (name) => html`<room-page name=${name}></room-page>`,
};

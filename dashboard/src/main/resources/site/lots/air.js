// Defines the elements that draw the air around a lot.
import { defined } from '../lib/defined.js';
import { AirChart } from '../rooms/air-chart.js';
import { LotAir } from './lot-air.js';

const ELEMENTS = { 'air-chart': AirChart, 'lot-air': LotAir };

export const define = () => defined(ELEMENTS);

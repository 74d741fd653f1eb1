// Defines the elements of the lots and lot pages.
import { defined } from '../lib/defined.js';
import { AirChart } from '../rooms/air-chart.js';
import { LikingPlot } from './liking-plot.js';
import { LotAir } from './lot-air.js';
import { LotCurve } from './lot-curve.js';
import { LotPage } from './lot-page.js';
import { LotRow } from './lot-row.js';
import { LotsPage } from './lots-page.js';
import { NumberPad } from './number-pad.js';
import { OutboxBar } from './outbox-bar.js';
import { SaySheet } from './say-sheet.js';
import { ScanSheet } from './scan-sheet.js';

const ELEMENTS = {
  'air-chart': AirChart,
  'liking-plot': LikingPlot,
  'lot-air': LotAir,
  'lot-curve': LotCurve,
  'lot-row': LotRow,
  'number-pad': NumberPad,
  'outbox-bar': OutboxBar,
  'say-sheet': SaySheet,
  'scan-sheet': ScanSheet,
  'lots-page': LotsPage,
  'lot-page': LotPage,
};

export const defineLots = () => defined(ELEMENTS);

// Defines the elements of the lots page.
import { defined } from '../lib/defined.js';
import { LotRow } from './lot-row.js';
import { LotsPage } from './lots-page.js';
import { OutboxBar } from './outbox-bar.js';

const ELEMENTS = { 'lot-row': LotRow, 'outbox-bar': OutboxBar, 'lots-page': LotsPage };

export const defineLots = () => defined(ELEMENTS);

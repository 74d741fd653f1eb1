// Defines the elements that open over a page about lots, to note something or to scan.
import { defined } from '../lib/defined.js';
import { NumberPad } from './number-pad.js';
import { SaySheet } from './say-sheet.js';
import { ScanSheet } from './scan-sheet.js';

const ELEMENTS = { 'number-pad': NumberPad, 'say-sheet': SaySheet, 'scan-sheet': ScanSheet };

export const define = () => defined(ELEMENTS);

// Defines the element of the placards page.
import { defined } from '../lib/defined.js';
import { PlacardsPage } from './placards-page.js';

export const definePlacards = () => defined({ 'placards-page': PlacardsPage });

// Defines the element of the placards page, and fetches its style sheet with it.
import { defined } from '../lib/defined.js';
import { PlacardsPage } from './placards-page.js';

export const definePlacards = () =>
  defined({ 'placards-page': PlacardsPage }, ['/placards/placards.css']);

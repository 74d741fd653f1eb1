// Defines the elements of the varieties page.
import { defined } from '../lib/defined.js';
import { DecisionForm } from './decision-form.js';
import { VarietiesPage } from './varieties-page.js';

const ELEMENTS = { 'decision-form': DecisionForm, 'varieties-page': VarietiesPage };

export const defineVarieties = () => defined(ELEMENTS);

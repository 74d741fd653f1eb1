// Every English text of the varieties page.
import { plural, words as common } from '../lib/words.js';

export const words = {
  ...common,

  varieties: {
    none: 'No variety has come in yet.',
    more: 'More',
    check: 'the check',
    ripens: 'Ripens here?',
    eats: 'Eats well, if ripe?',
    keeps: 'Keeps?',
    why: 'What this rests on',
    years: 'Year by year',
    apart: 'Set apart',
    suggested: (what) => `Suggested: ${what}`,
    beside: 'Beside the check',
    still: (n) => `Provisional: ${n} ${plural(n, 'fruit is', 'fruits are')} still kept.`,
    decided: (what, day) => `Decided on ${day}: ${what}`,
    open: 'Not decided yet',
    decide: 'Decide',
    of: (variety) => `What becomes of ${variety}?`,
    reason: 'Why, and how if it is tried again',
    decisions: { 'grow-again': 'Grow again', 'try-again': 'Try again', drop: 'Drop' },
    leave: 'Not now',
  },
};

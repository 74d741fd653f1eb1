// Every English text of the placards page.
import { words as common } from '../lib/words.js';

export const words = {
  ...common,

  placards: {
    why: 'Hang one at the door of each room and place. “Scan” on the lots page reads it, and then the crates that were carried there. A phone’s own camera opens the room’s page.',
    notReachable: (host) =>
      `This page was opened at ${host}, where no other phone can reach it. Open it at the shed’s address in your network before you print.`,
    places: 'Places',
    crates: 'Crates',
    noCrates: 'No lot has a fruit left.',
    print: { places: 'Print the placards', crates: 'Print the labels' },
    tick: 'Print it',
    square: (name) => `Square that leads to ${name}`,
    scan: 'Scan, then scan the crates',
    harvested: (day) => `harvested ${day}`,
  },
};

// Every English text of the shed page.
import { words as common } from '../lib/words.js';

export const words = {
  ...common,

  record: {
    heading: 'Copies and files',
    noCopy: 'There is no copy yet; the shed makes one every night.',
    copied: (time, size) => `Everything was last copied at ${time} (${size}); the shed does so every night.`,
    versions: (schema, entries) => `The record has schema ${schema}; entries are read up to version ${entries}.`,
    newer: (n) => `A newer version of the program wrote ${n} ${n === 1 ? 'entry' : 'entries'} that this one cannot read. They are kept; install the newer version again.`,
    lots: 'Everything said of the lots, as CSV',
    samples: (room) => `A year of the air in ${room}, as CSV`,
    copy: 'The newest copy of everything',
    tried: 'Tried with somebody beside it',
    nobody: 'Nobody has stood beside an output yet and noted that the right thing ran (“rindward commission”).',
    protection: 'What protects the heated rooms',
    shown: (room, what) => `${room ?? 'The whole shed'}: ${what}`,
    before: 'Before that',
    seen: (output, room, time, by) => `${output}, ${room}: ${time}, ${by}`,
  },

  shed: {
    outputs: 'Outputs',
    probes: 'Probes',
    program: 'The program',
    byHand: (on, until, who) => `${on ? 'On' : 'Off'} by hand until ${until} (${who})`,
    switch: 'Switch by hand',
    release: 'Let it run by itself',
    signIn: 'Sign in to switch by hand',
    noValue: 'no value',
    place: {
      air: 'in the air',
      corner: 'in the coldest corner',
      pulp: 'in a fruit',
      outdoor: 'outdoors',
    },
    dialog: {
      heading: (output, room) => `${output}, ${room}`,
      what: 'Switch it',
      on: 'on',
      off: 'off',
      howLong: 'for',
      minutes: (n) => (n < 60 ? `${n} min` : n === 60 ? '1 hour' : `${n / 60} hours`),
      then: (until) => `At ${until} it runs by itself again. What keeps the room safe stays in force.`,
      confirm: (output, on, until) => `${output} ${on ? 'on' : 'off'} until ${until}`,
      leave: 'Leave it as it is',
      refused: 'Not done:',
    },
  },
};

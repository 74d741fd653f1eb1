// Every English text of the shed page.
import { words as common } from '../lib/words.js';

export const words = {
  ...common,

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

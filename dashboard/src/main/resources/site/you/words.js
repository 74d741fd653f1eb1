// Every English text of the page on who the reader is.
import { words as common } from '../lib/words.js';

export const words = {
  ...common,

  you: {
    setUp: 'Become the owner',
    setUpNote: 'The program showed a code when it started. Whoever has it sets the first password.',
    signInNote: 'Anybody here may look. To change something, sign in once on this device.',
    closedNote: 'This farm shows itself only to those who work here.',
    code: 'Code',
    name: 'Name',
    password: 'Password',
    passwordNote: 'at least 10 characters',
    signIn: 'Sign in',
    signOut: 'Sign out',
    signedIn: (name, may) => `${name} may do ${may}.`,
    may: (what) => `may do ${what}`,
    changePassword: 'Change your password',
    oldPassword: 'Old password',
    newPassword: 'New password',
    change: 'Change it',
    changed: 'Changed. Every other device has to sign in again.',
    devices: 'Your devices and API tokens',
    thisDevice: 'this device',
    until: (day) => `until ${day}`,
    end: 'End',
    tokenFor: 'A token for',
    makeToken: 'Make a token',
    tokenOnce: 'Copy it now; it is not shown again:',
    people: 'People',
    role: 'May do',
    roles: { owner: 'everything', helper: 'the work in the shed', panelist: 'tasting only' },
    keep: 'Let them in',
    remove: 'Remove',
    audit: 'Who changed what',
  },
};

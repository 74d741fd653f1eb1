// The pages of the site. A page's elements are fetched when it is first looked at.
import { html } from 'lit';
import { words } from '../lib/words.js';

const once = (fetchPage) => {
  let fetched;
  return () => (fetched ??= fetchPage());
};

const lotElements = once(async () => (await import('../lots/lots.js')).defineLots());

export const PAGES = {
  now: {
    path: '/',
    needsShed: true,
    link: () => words.nav.now,
    title: () => words.nav.now,
    load: once(async () => (await import('../rooms/rooms.js')).defineRooms()),
    view: () => html`<rooms-page></rooms-page>`,
  },
  room: {
    path: '/room/',
    needsShed: true,
    link: () => '',
    title: (name) => name,
    load: once(async () => (await import('../rooms/room.js')).defineRoom()),
    view: (name) => html`<room-page name=${name}></room-page>`,
  },
  alarms: {
    path: '/alarms',
    needsShed: true,
    link: () => words.nav.alarms,
    title: () => words.nav.alarms,
    load: once(async () => (await import('../alarms/alarms.js')).defineAlarms()),
    view: () => html`<alarms-page></alarms-page>`,
  },
  lots: {
    path: '/lots',
    needsShed: false,
    link: () => words.nav.lots,
    title: () => words.nav.lots,
    load: lotElements,
    view: () => html`<lots-page></lots-page>`,
  },
  lot: {
    path: '/lot/',
    needsShed: false,
    link: () => '',
    title: (code) => code.toUpperCase(),
    load: lotElements,
    view: (code) => html`<lot-page code=${code.toUpperCase()}></lot-page>`,
  },
  shed: {
    path: '/shed',
    needsShed: true,
    link: () => words.nav.shed,
    title: () => words.nav.shed,
    load: once(async () => (await import('../shed/shed.js')).defineShed()),
    view: () => html`<shed-page></shed-page>`,
  },
  you: {
    path: '/you',
    needsShed: false,
    link: () => words.nav.you,
    title: () => words.you.heading,
    load: once(async () => (await import('../you/you.js')).defineYou()),
    view: () => html`<you-page></you-page>`,
  },
};

/** The page of an address's first part; the front page for one that is not known. */
export const pageOf = (part) => PAGES[part] ?? PAGES.now;

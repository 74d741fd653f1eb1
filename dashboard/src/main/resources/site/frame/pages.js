// The pages of the site. A page's elements are fetched when it is first looked at; what opens over them, or
// lies far down, `later`, when the page can be read.
import { html } from 'lit';
import { once } from '../lib/once.js';
import { words } from '../lib/words.js';

const tastingElements = once(async () =>
  (await import('../tastings/tastings.js')).defineTastings(),
);

const lotsElements = once(async () => (await import('../lots/lots.js')).defineLots());

const lotElements = once(async () => (await import('../lots/lot.js')).defineLot());

/** All that a walk from lot to lot may need, in a barn without a network. */
const barn = [
  once(async () => (await import('../lots/sheets.js')).defineSheets()),
  once(async () => (await import('../lots/air.js')).defineLotAir()),
  lotElements,
  lotsElements,
];

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
    load: lotsElements,
    later: barn,
    view: () => html`<lots-page></lots-page>`,
  },
  lot: {
    path: '/lot/',
    needsShed: false,
    link: () => '',
    title: (code) => code.toUpperCase(),
    load: lotElements,
    later: barn,
    view: (code) => html`<lot-page code=${code.toUpperCase()}></lot-page>`,
  },
  tastings: {
    path: '/tastings',
    needsShed: false,
    link: () => words.nav.tastings,
    title: () => words.nav.tastings,
    load: tastingElements,
    view: () => html`<tastings-page></tastings-page>`,
  },
  tasting: {
    path: '/tasting/',
    needsShed: false,
    link: () => '',
    title: (name) => name,
    load: tastingElements,
    view: (name) => html`<tasting-page name=${name}></tasting-page>`,
  },
  /** A taster's own page: nothing around it, so that nothing there tells what is tasted. */
  taste: {
    path: '/taste/',
    needsShed: false,
    standsAlone: true,
    link: () => '',
    title: () => words.nav.taste,
    load: tastingElements,
    view: (secret) => html`<taste-page secret=${secret}></taste-page>`,
  },
  varieties: {
    path: '/varieties',
    needsShed: false,
    link: () => words.nav.varieties,
    title: () => words.nav.varieties,
    load: once(async () => (await import('../varieties/varieties.js')).defineVarieties()),
    view: () => html`<varieties-page></varieties-page>`,
  },
  /** What a placard of a place that is no room leads to: what lies there. */
  place: {
    path: '/place/',
    needsShed: false,
    link: () => '',
    title: (name) => name,
    load: lotsElements,
    later: barn,
    view: (name) => html`<lots-page .place=${name}></lots-page>`,
  },
  placards: {
    path: '/placards',
    needsShed: false,
    link: () => words.nav.placards,
    title: () => words.nav.placards,
    load: once(async () => (await import('../placards/placards.js')).definePlacards()),
    view: () => html`<placards-page></placards-page>`,
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
    title: () => words.nav.who,
    load: once(async () => (await import('../you/you.js')).defineYou()),
    view: () => html`<you-page></you-page>`,
  },
  /** What stands where there is no page: an old link, or a slip in an address. */
  nowhere: {
    path: '',
    needsShed: false,
    link: () => '',
    title: () => words.page.nowhere,
    load: async () => {},
    view: () => html`<p class="ways"><a href="/">${words.page.toNow}</a></p>`,
  },
};

/** The page of an address's first part. */
export const pageOf = (part) =>
  part === '' ? PAGES.now : Object.hasOwn(PAGES, part) ? PAGES[part] : PAGES.nowhere;

/** The pages that every page leads to, in this order. */
export const MENU = [
  PAGES.now,
  PAGES.alarms,
  PAGES.lots,
  PAGES.tastings,
  PAGES.varieties,
  PAGES.shed,
];

/** The page of the menu to which a page belongs. */
export const menuOf = (page) =>
  [PAGES.lot, PAGES.place, PAGES.placards].includes(page)
    ? PAGES.lots
    : page === PAGES.tasting
      ? PAGES.tastings
      : page === PAGES.room
        ? PAGES.now
        : page;

// The pages of the site as `pages.json` lists them. A page's module is fetched when the page is first looked at;
// it defines its elements, and says how each of its pages is drawn. What opens over a page of the barn, or lies far
// down in it, comes `later`, when the page can be read.
import { html } from 'lit';
import manifest from '../pages.json' with { type: 'json' };
import { once } from '../lib/once.js';
import { words } from '../lib/words.js';

/** The build's name, which stands behind the address of every file that is of one build. */
const { search } = new URL(import.meta.url);
const brought = new Map();

/** Brings a module, once. @param {string} address @returns {() => Promise<object>} how its pages are drawn */
function bring(address) {
  if (!brought.has(address)) {
    const fetched = once(async () => {
      const { define, views } = await import(address + search);
      define();
      return views;
    });
    brought.set(address, fetched);
  }
  return brought.get(address);
}

const listed = Object.entries(manifest.pages);

/** All that a walk from lot to lot may need, in a barn without a network. */
const barn = [
  ...new Set(listed.flatMap(([, { module, keeps }]) => (keeps ? [...keeps, module] : []))),
].map(bring);

function page([key, { address, module, title, under, needsShed, standsAlone, keeps }]) {
  const [path, called] = address.split('{');
  /** What stands in the address; a lot's code is written in capitals, however it was typed. */
  const named = (name) => (called === 'code}' ? name.toUpperCase() : name);
  let views;
  return {
    path,
    under: under ?? key,
    needsShed,
    standsAlone,
    title: (name) => (title ? words.nav[title] : named(name)),
    load: async () => {
      views = await bring(module)();
    },
    later: keeps ? barn : [],
    view: (name) => views[key](named(name)),
  };
}

export const PAGES = Object.fromEntries(listed.map((each) => [each[0], page(each)]));

/** What stands where there is no page: an old link, or a slip in an address. */
const NOWHERE = {
  title: () => words.page.nowhere,
  load: async () => {},
  later: [],
  view: () => html`<p class="ways"><a href="/">${words.page.toNow}</a></p>`,
};

/** The page of an address's first part. */
export const pageOf = (part) =>
  Object.values(PAGES).find(({ path }) => path.split('/')[1] === part) ?? NOWHERE;

/** The pages that every page leads to, in this order. */
export const MENU = manifest.menu.map((key) => PAGES[key]);

/** The page of the menu to which a page belongs. */
export const menuOf = ({ under }) => PAGES[under];

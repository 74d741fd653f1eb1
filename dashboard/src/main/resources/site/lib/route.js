// Which page is shown. Links inside the site change the page without asking for it again.

/** Emits `change` when the address has changed. */
class Route extends EventTarget {
  /** The address from which a link led here; null where none did. @type {string | null} */
  cameFrom = null;

  start() {
    addEventListener('popstate', () => this.#changed());
    document.addEventListener('click', (event) => this.#follow(event));
  }

  /** The first part of the path: '' for the front page. */
  get page() {
    return location.pathname.split('/')[1];
  }

  /** The second part of the path, decoded; empty where there is none. */
  get name() {
    try {
      return decodeURIComponent(location.pathname.split('/')[2] ?? '');
    } catch {
      return '';
    }
  }

  /** What stands after the question mark. */
  get query() {
    return new URLSearchParams(location.search);
  }

  /**
   * Goes to an address of this site.
   * @param {string} path
   * @param {{ replace?: boolean }} [how] `replace` leaves no step to come back to
   */
  go(path, { replace = false } = {}) {
    history[replace ? 'replaceState' : 'pushState'](null, '', path);
    this.#changed();
  }

  #follow(event) {
    const link = event.target.closest?.('a[href]');
    const plain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey;
    if (!link || !plain || link.hasAttribute('download') || link.origin !== location.origin) {
      return;
    }
    event.preventDefault();
    this.cameFrom = location.pathname + location.search;
    this.go(link.pathname + link.search);
    scrollTo(0, 0);
    document.querySelector('main')?.focus({ preventScroll: true });
  }

  #changed() {
    this.dispatchEvent(new Event('change'));
  }
}

/** The site's one address. */
export const route = new Route();

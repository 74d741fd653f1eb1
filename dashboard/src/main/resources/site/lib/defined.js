// Defines elements once, and fetches their style sheets before they are shown.

/**
 * @param {Record<string, typeof HTMLElement>} elements by the names of their tags
 * @param {string[]} sheets addresses of style sheets
 */
export async function defined(elements, sheets) {
  await Promise.all(sheets.map(styled));
  Object.entries(elements).forEach(([name, element]) => {
    if (customElements.get(name) === undefined) {
      customElements.define(name, element);
    }
  });
}

/** A sheet that cannot be had is done without: the page stays readable. */
const styled = (href) =>
  new Promise((resolve) => {
    const sheet = document.createElement('link');
    sheet.rel = 'stylesheet';
    sheet.href = href;
    sheet.onload = resolve;
    sheet.onerror = resolve;
    document.head.append(sheet);
  });

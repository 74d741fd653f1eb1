// Defines elements, each of them once: pages share some.

/** @param {Record<string, typeof HTMLElement>} elements by the names of their tags */
export function defined(elements) {
  Object.entries(elements).forEach(([name, element]) => {
    if (customElements.get(name) === undefined) {
      customElements.define(name, element);
    }
  });
}

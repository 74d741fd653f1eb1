// A square that a telephone reads, drawn by the shed.
import { html } from 'lit';

/** @param {string} says @param {string} alt what it is, for whoever does not see it */
export const square = (says, alt) =>
  html`<img
    class="square"
    src="/api/square.svg?says=${encodeURIComponent(says)}"
    alt=${alt}
    width="240"
    height="240"
    loading="lazy"
  />`;

/** Prints once every square is there; one that cannot be had is no reason to print nothing. */
export async function printWithSquares(page) {
  const squares = [...page.querySelectorAll('.square')];
  squares.forEach((image) => (image.loading = 'eager'));
  await Promise.allSettled(squares.map((image) => image.decode()));
  print();
}

/** Whether other phones can reach the address that this page was opened at. */
export const isReachable = () => !/^(localhost|127\.|\[::1\])/.test(location.hostname);

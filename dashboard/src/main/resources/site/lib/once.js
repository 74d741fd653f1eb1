// What is fetched once, whoever asks for it; after a failure the next one who asks tries again.

/** @template T @param {() => Promise<T>} fetch @returns {() => Promise<T>} */
export const once = (fetch) => {
  let fetched;
  return () =>
    (fetched ??= fetch().catch((failure) => {
      fetched = undefined;
      throw failure;
    }));
};

// What the tests of a module are written with; run by ModulesTest, which looks at what became of each.
const tests = [];

/** @param {string} name what is so @param {() => void | Promise<void>} body throws where it is not */
export const test = (name, body) => tests.push({ name, body });

/** Fails where two values differ in what they hold. */
export function equal(actual, expected, about = '') {
  const [was, must] = [actual, expected].map((value) => JSON.stringify(value));
  if (was !== must) {
    throw new Error(`${about} was ${was} but must be ${must}`);
  }
}

/** @returns {Promise<{ name: string, failure: string | null }[]>} */
export async function run() {
  const results = [];
  for (const { name, body } of tests) {
    try {
      await body();
      results.push({ name, failure: null });
    } catch (failure) {
      results.push({ name, failure: String(failure.message ?? failure) });
    }
  }
  return results;
}

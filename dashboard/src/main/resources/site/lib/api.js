// Asks the server, with an end to the waiting, and says in one way what went wrong.

const TIMEOUT_MS = 8000;

/** What went wrong with a request: `offline`, `unreachable` or `refused`, with the server's words. */
export class RequestFailure extends Error {
  /**
   * @param {'offline' | 'unreachable' | 'refused'} kind
   * @param {string} [detail] the server's own sentence, where it gave one
   */
  constructor(kind, detail = '') {
    super(detail || kind);
    this.kind = kind;
    this.detail = detail;
  }
}

/**
 * Returns the JSON at the path, and the server's clock at that moment in milliseconds (NaN where
 * the server did not say).
 * @param {string} path
 */
export async function getJson(path) {
  let response;
  try {
    response = await fetch(path, { signal: AbortSignal.timeout(TIMEOUT_MS), cache: 'no-store' });
  } catch {
    throw new RequestFailure(navigator.onLine ? 'unreachable' : 'offline');
  }
  if (!response.ok) {
    const problem = await response.json().catch(() => ({}));
    throw new RequestFailure('refused', problem.detail ?? problem.title);
  }
  try {
    return { body: await response.json(), serverMs: Date.parse(response.headers.get('Date')) };
  } catch {
    throw new RequestFailure('unreachable');
  }
}

// Asks the server, with an end to the waiting, and says in one way what went wrong.

const TIMEOUT_MS = 8000;
const ATTEMPTS = 3;
const PAUSE_MS = 700;

let csrfToken = null;

/** Sends this along with every change from now on. @param {string | null} token */
export function useCsrfToken(token) {
  csrfToken = token;
}

/** What went wrong with a request: `offline`, `unreachable` or `refused`, with the server's words. */
export class RequestFailure extends Error {
  /**
   * @param {'offline' | 'unreachable' | 'refused'} kind
   * @param {string} [detail] the server's own sentence, where it gave one
   * @param {number} [status] the server's status, where it answered
   */
  constructor(kind, detail = '', status = 0) {
    super(detail || kind);
    this.kind = kind;
    this.detail = detail;
    this.status = status;
  }
}

/**
 * Returns the JSON at the path, the server's clock at that moment in milliseconds (NaN where the
 * server did not say), and the name of the build of the site that it serves.
 * @param {string} path
 * @param {AbortSignal} [signal] ends the waiting earlier
 */
export async function getJson(path, signal) {
  const response = await ask(path, {}, signal);
  const { headers } = response;
  return {
    body: await jsonOf(response),
    serverMs: Date.parse(headers.get('Date')),
    build: headers.get('Site-Build'),
  };
}

/**
 * Asks for a change, and returns the JSON of the answer; null where there is none. A change that
 * may have been made before the network was lost is sent again under the same key, so that it is
 * made once.
 * @param {'POST' | 'PUT' | 'DELETE'} method
 * @param {string} path
 * @param {object} [body]
 * @param {{ key?: string, ifMatch?: string, attempts?: number }} [how] `key` of a change that was
 *   tried before; `ifMatch` names what the sender has seen
 */
export async function send(method, path, body, how = {}) {
  const { key = newKey(), ifMatch, attempts = ATTEMPTS } = how;
  const headers = { 'Idempotency-Key': key, ...(ifMatch && { 'If-Match': ifMatch }) };
  for (let attempt = 1; ; attempt += 1) {
    try {
      const response = await ask(path, withBody(method, body, headers));
      return response.status === 204 ? null : await jsonOf(response);
    } catch (failure) {
      if (failure.kind === 'refused' || attempt === attempts) {
        throw failure;
      }
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS * attempt));
    }
  }
}

/**
 * Asks about something too large for an address, and returns the JSON of the answer. It changes
 * nothing, so it is not sent again.
 * @param {string} path
 * @param {object} body
 */
export const askAbout = async (path, body) => jsonOf(await ask(path, withBody('POST', body)));

const withBody = (method, body, headers = {}) => ({
  method,
  headers: {
    ...headers,
    ...(body !== undefined && { 'Content-Type': 'application/json' }),
    ...(csrfToken !== null && { 'X-CSRF-Token': csrfToken }),
  },
  body: JSON.stringify(body),
});

async function ask(path, options, signal) {
  let response;
  try {
    const timeout = AbortSignal.timeout(TIMEOUT_MS);
    response = await fetch(path, {
      ...options,
      signal: signal ? AbortSignal.any([signal, timeout]) : timeout,
    });
  } catch {
    throw new RequestFailure(navigator.onLine ? 'unreachable' : 'offline');
  }
  if (!response.ok) {
    const problem = await response.json().catch(() => ({}));
    throw new RequestFailure('refused', problem.detail ?? problem.title, response.status);
  }
  return response;
}

async function jsonOf(response) {
  try {
    return await response.json();
  } catch {
    throw new RequestFailure('unreachable');
  }
}

/** Random, and also there on a page that came without encryption. */
export const newKey = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

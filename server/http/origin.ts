import type { IncomingHttpHeaders } from 'node:http';

/**
 * True when a browser on another site sent this. A browser names the page's origin on every socket and every change; what names none
 * is no browser, or a page of our own reading.
 */
export function isForeign(headers: IncomingHttpHeaders, own: string | null): boolean {
  const { origin, host, 'sec-fetch-site': site } = headers;
  // A neighbour's page under the same domain is foreign too.
  if (site === 'cross-site' || site === 'same-site') return true;
  if (origin === undefined) return false;
  if (origin === own) return false;
  try {
    return own !== null || new URL(origin).host !== host;
  } catch {
    return true;
  }
}

/** The address the reader's browser used. */
export function addressOf(headers: IncomingHttpHeaders, own: string | null): string {
  return own ?? `http://${headers.host ?? 'localhost'}`;
}

import { answerTo, isOurs } from './answer.ts';

/** What of a service worker's own world is used here; the page's types and its own cannot be loaded together. */
interface Waiting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked extends Waiting {
  request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Keeper {
  __WB_MANIFEST: readonly { url: string; revision: string | null }[];
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  addEventListener(kind: 'install' | 'activate', heard: (event: Waiting) => void): void;
  addEventListener(kind: 'fetch', heard: (event: Asked) => void): void;
}
declare const self: Keeper;

const FILES = self.__WB_MANIFEST;
const PREFIX = 'bowline/page/';
/** Windows that were open before this edition came still want the files of theirs. */
const EDITIONS_KEPT = 2;

/** Named after what is in it, so that an edition is a name of its own. */
async function editionName(): Promise<string> {
  const text = new TextEncoder().encode(JSON.stringify(FILES));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', text));
  return PREFIX + Array.from(digest.slice(0, 8), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Fetches every file of this edition, except what an earlier one has under the same lasting name. */
async function fill(): Promise<void> {
  const cache = await caches.open(await editionName());
  for (const { url, revision } of FILES) {
    const address = `/${url}`;
    const known = revision === null ? await caches.match(address) : undefined;
    const answer = known ?? (await fetch(address, { cache: revision === null ? 'default' : 'reload' }));
    if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
    await cache.put(address, answer);
  }
}

async function dropOld(): Promise<void> {
  const current = await editionName();
  const before = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== current);
  const old = before.slice(0, Math.max(0, before.length + 1 - EDITIONS_KEPT));
  await Promise.all(old.map((name) => caches.delete(name)));
}

self.addEventListener('install', (event) => event.waitUntil(fill().then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil(dropOld().then(() => self.clients.claim())));
self.addEventListener('fetch', (event) => {
  if (!isOurs(event.request, location.origin)) return;
  const own = editionName().then((name) => caches.open(name));
  event.respondWith(
    answerTo(event.request, {
      own: { match: async (address) => (await own).match(address), put: async (address, answer) => (await own).put(address, answer) },
      any: (address) => caches.match(address),
      fetch: (request) => fetch(request),
      wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
    }),
  );
});

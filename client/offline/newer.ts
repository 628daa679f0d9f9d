import { useSyncExternalStore } from 'react';
import { firstScreen } from './firstScreen.ts';

/** How often it is looked, in milliseconds: pages stay open all day. Chosen, not measured. */
const LOOK_AGAIN = 10 * 60 * 1000;

/** How long the first screen goes before everything else, in milliseconds. Chosen, not measured. */
const PATIENCE = 15_000;

const listeners = new Set<() => void>();
let newer = false;

/** The script a page begins with; it is named after what is in it, so that another name is another page. Null where the text is no page of ours. */
export const scriptOf = (page: string): string | null => /<script type="module"[^>]* src="([^"]+)"/.exec(page)?.[1] ?? null;

async function look(): Promise<void> {
  const answer = await fetch('/index.html', { cache: 'no-cache' }).catch(() => null);
  if (!answer?.ok) return;
  const there = scriptOf(await answer.text());
  newer = there !== null && there !== document.querySelector('script[type="module"][src]')?.getAttribute('src');
  for (const listener of listeners) listener();
}

/** Has the page's files kept by the browser, so that it opens without a line, and looks whether the library has a newer page. Nothing is exchanged while a page is open. */
export function keepPage(): void {
  let looked = Date.now();
  let registration: ServiceWorkerRegistration | undefined;
  const lookAgain = () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < LOOK_AGAIN) return;
    looked = Date.now();
    void registration?.update().catch(() => undefined);
    void look();
  };
  document.addEventListener('visibilitychange', lookAgain);
  addEventListener('online', lookAgain);
  setInterval(lookAgain, LOOK_AGAIN);
  // Some browsers ask their reader about this: not before the page was put on the desk.
  if (matchMedia('(display-mode: standalone)').matches) void navigator.storage?.persist();
  // Browsers have no keeper on addresses without https other than the machine's own.
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker.addEventListener('controllerchange', () => void look());
  const register = () => navigator.serviceWorker.register('/sw.js').then((made) => (registration = made)).catch(() => undefined);
  const loaded = new Promise<void>((resolve) => (document.readyState === 'complete' ? resolve() : addEventListener('load', () => resolve(), { once: true })));
  void Promise.all([loaded, firstScreen(PATIENCE)]).then(register);
}

/** True when the library has a newer page than this one. */
export const useNewer = (): boolean =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => newer,
  );

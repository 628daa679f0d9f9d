import { useSyncExternalStore } from 'react';
import { go, type Place } from '../router.ts';

type Known = Partial<Record<'shelf' | 'folder' | 'stand' | 'section' | 'archive', Place>>;

const KEY = 'bowline/places';
const LAST = 'bowline/last';
/** Places everybody knows. */
const ALWAYS: Known = { shelf: { at: 'shelf' }, archive: { at: 'archive' } };
const listeners = new Set<() => void>();

/** A window of its own remembers its own places; one that is opened anew begins with those of the last. */
const kept = () => sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY) ?? '{}';

function read(): Known {
  try {
    return JSON.parse(kept()) as Known;
  } catch {
    return {};
  }
}

function keep(known: Known): void {
  const text = JSON.stringify({ ...read(), ...known });
  if (text === sessionStorage.getItem(KEY)) return;
  sessionStorage.setItem(KEY, text);
  localStorage.setItem(KEY, text);
  for (const listener of listeners) listener();
}

/** The programme a part lies in, once known. */
export const rememberFolder = (programme: string): void => keep({ folder: { at: 'folder', programme } });

/** The part in hand: Stand and Section are two views of it. A measure already looked at there is kept. */
export function rememberPart(part: string, measure: number | null = null): void {
  const before = read().stand;
  const known = before?.at === 'stand' && before.part === part ? before.measure : null;
  keep({ stand: { at: 'stand', part, measure: measure ?? known }, section: { at: 'section', part, passage: null } });
}

/** The part this window had in hand last; null before any. */
export function partInHand(): string | null {
  const { stand } = read();
  return stand?.at === 'stand' ? stand.part : null;
}

/** Goes to a place this window knows; to one it does not know yet leads nothing. */
export function goPlace(place: keyof Known): void {
  const target = ALWAYS[place] ?? read()[place];
  if (target) go(target);
}

/** The address one is at, for when the page is next opened without one. */
export const rememberAddress = (address: string): void => localStorage.setItem(LAST, address);

/** Where one was when the page was last open in this browser; null where that is not known. */
export const lastAddress = (): string | null => localStorage.getItem(LAST);

/** Another person has been nowhere yet. */
export function forgetPlaces(): void {
  for (const storage of [sessionStorage, localStorage]) for (const key of [KEY, LAST]) storage.removeItem(key);
  for (const listener of listeners) listener();
}

/** The places this window has been to, so that each word on the ledge leads back. */
export function useRemembered(): Known {
  const text = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    kept,
  );
  return { ...(text ? read() : {}), ...ALWAYS };
}

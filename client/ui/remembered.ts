import { useSyncExternalStore } from 'react';
import { go, type Place } from '../router.ts';

type Known = Partial<Record<'shelf' | 'folder' | 'stand' | 'section', Place>>;

const KEY = 'bowline/places';
const listeners = new Set<() => void>();

const kept = () => sessionStorage.getItem(KEY) ?? '{}';

function read(): Known {
  try {
    return JSON.parse(kept()) as Known;
  } catch {
    return {};
  }
}

function keep(known: Known): void {
  const text = JSON.stringify({ ...read(), ...known });
  if (text === kept()) return;
  sessionStorage.setItem(KEY, text);
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

/** Goes to a place this window knows; to one it does not know yet leads nothing. */
export function goPlace(place: keyof Known): void {
  const target = place === 'shelf' ? ({ at: 'shelf' } as const) : read()[place];
  if (target) go(target);
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
  return { ...(text ? read() : {}), shelf: { at: 'shelf' } };
}

import { useSyncExternalStore } from 'react';

/** First and last note of a passage. */
export interface Passage {
  first: string;
  last: string;
}

/** Where one is. Ids are the library's own. */
export type Place =
  /** `invited`: the link is an invitation; `came`: back from the orchestra's own sign-in; `trouble`: back without having come in; `confirm`: an address is confirmed. */
  | { at: 'signIn'; token: string | null; invited?: true; came?: true; trouble?: string; confirm?: string }
  | { at: 'shelf' }
  | { at: 'folder'; programme: string }
  /** `open`: the measure stands open there, with this slip in hand where one is named. */
  | { at: 'stand'; part: string; measure: number | null; open?: string }
  /** `passage`: whose bow changes are to be shared out. */
  | { at: 'section'; part: string; passage: Passage | null }
  /** Two states of a part, by rows of its log; null: the last two. */
  | { at: 'revisions'; part: string; between: { from: number; to: number } | null }
  | { at: 'archive' }
  /** What a corrected edition changed in a part. */
  | { at: 'changed'; part: string; /** Beside which edition, null for the last one before. */ revision: number | null }
  | { at: 'rules'; /** Its id, null for all of them. */ rule: string | null };

function passageIn(query: URLSearchParams): Passage | null {
  const [first, last] = [query.get('from'), query.get('to')];
  return first && last ? { first, last } : null;
}

function betweenIn(query: URLSearchParams): { from: number; to: number } | null {
  const [from, to] = [query.get('from'), query.get('to')];
  return from && to && /^\d{1,9}$/.test(from) && /^\d{1,9}$/.test(to) ? { from: Number(from), to: Number(to) } : null;
}

function atTheDoor(query: URLSearchParams): Place {
  const [trouble, confirm] = [query.get('trouble'), query.get('confirm')];
  return {
    at: 'signIn',
    token: query.get('token'),
    ...(query.has('invited') ? { invited: true } : {}),
    ...(query.has('came') ? { came: true } : {}),
    ...(trouble === null ? {} : { trouble }),
    ...(confirm === null ? {} : { confirm }),
  };
}

/** Place an address names; anything unknown is the shelf. */
export function placeOf(path: string, search: string): Place {
  const [, first = '', second = '', third = ''] = path.split('/').map(decodeURIComponent);
  const query = new URLSearchParams(search);
  if (first === 'sign-in') return atTheDoor(query);
  if (first === 'folder' && second) return { at: 'folder', programme: second };
  if (first === 'stand' && second) {
    const open = query.get('open');
    return { at: 'stand', part: second, measure: Number(query.get('m')) || null, ...(open === null ? {} : { open }) };
  }
  if (first === 'section' && second) return { at: 'section', part: second, passage: passageIn(query) };
  if (first === 'revisions' && second) return { at: 'revisions', part: second, between: betweenIn(query) };
  if (first === 'archive') return { at: 'archive' };
  if (first === 'changed' && second) return { at: 'changed', part: second, revision: Number(query.get('beside')) || null };
  if (first === 'rules') return { at: 'rules', rule: second && third ? `${second}/${third}` : null };
  return { at: 'shelf' };
}

function doorAddress({ token, invited, came, trouble, confirm }: Extract<Place, { at: 'signIn' }>): string {
  const said = Object.entries({ token, invited: invited && '', came: came && '', trouble, confirm }).filter(([, value]) => value !== null && value !== undefined);
  return said.length ? `/sign-in?${new URLSearchParams(said as [string, string][])}` : '/sign-in';
}

/** Address of a place. Invariant: `placeOf` reads it back. */
export function addressOf(place: Place): string {
  switch (place.at) {
    case 'signIn':
      return doorAddress(place);
    case 'shelf':
      return '/shelf';
    case 'folder':
      return `/folder/${encodeURIComponent(place.programme)}`;
    case 'stand':
      return `/stand/${encodeURIComponent(place.part)}${place.measure ? `?m=${place.measure}${place.open === undefined ? '' : `&open=${encodeURIComponent(place.open)}`}` : ''}`;
    case 'section':
      return `/section/${encodeURIComponent(place.part)}${place.passage ? `?${new URLSearchParams({ from: place.passage.first, to: place.passage.last })}` : ''}`;
    case 'revisions':
      return `/revisions/${encodeURIComponent(place.part)}${place.between ? `?from=${place.between.from}&to=${place.between.to}` : ''}`;
    case 'archive':
      return '/archive';
    case 'changed':
      return `/changed/${encodeURIComponent(place.part)}${place.revision ? `?beside=${place.revision}` : ''}`;
    case 'rules':
      return place.rule ? `/rules/${place.rule.split('/').map(encodeURIComponent).join('/')}` : '/rules';
  }
}

const listeners = new Set<() => void>();
const changed = () => listeners.forEach((listener) => listener());

export function go(place: Place, { replace = false } = {}): void {
  const address = addressOf(place);
  if (replace) history.replaceState(null, '', address);
  else if (address !== location.pathname + location.search) history.pushState(null, '', address);
  changed();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    removeEventListener('popstate', listener);
  };
}

export function usePlace(): Place {
  const address = useSyncExternalStore(subscribe, () => location.pathname + location.search);
  const [path, search] = address.split('?');
  return placeOf(path!, search ? `?${search}` : '');
}

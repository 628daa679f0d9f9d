import { newId } from '../../agreement/newId.ts';

const KEY = 'bowline/owner';

/** A name for whoever is signed in in this browser; every window reads it at once, so that no late answer is kept for the next person. */
export function owner(): string {
  const known = localStorage.getItem(KEY);
  if (known) return known;
  const name = newId();
  localStorage.setItem(KEY, name);
  return name;
}

export const forgetOwner = (): void => localStorage.removeItem(KEY);

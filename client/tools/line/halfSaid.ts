const keyOf = (about: string): string => `bowline/half-said/${about}`;

/** Words begun on the ledge and left there before they were said; empty where there are none. `about`: whose they are and what they are for. */
export const halfSaid = (about: string): string => sessionStorage.getItem(keyOf(about)) ?? '';

/** Keeps words while they are written, until they are said: then `text` is empty. They go with the browser's window. */
export function keepHalfSaid(about: string, text: string): void {
  if (text) sessionStorage.setItem(keyOf(about), text);
  else sessionStorage.removeItem(keyOf(about));
}

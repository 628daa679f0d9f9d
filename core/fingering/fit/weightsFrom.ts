import type { Weights } from './chain.ts';
import { SLOTS } from './slots.ts';

/** Weights from their base64 text, one signed byte a slot. Throws where the length is wrong. */
export function weightsFrom(text: string): Weights {
  const bytes = atob(text);
  if (bytes.length !== SLOTS) throw new RangeError(`${bytes.length} weights where ${SLOTS} belong.`);
  return Int8Array.from(bytes, (character) => character.charCodeAt(0));
}

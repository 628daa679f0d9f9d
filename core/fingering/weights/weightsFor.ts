import type { InstrumentName } from '../../music/part.ts';
import type { Weights } from '../fit/chain.ts';
import { weightsFrom } from '../fit/weightsFrom.ts';
import { CELLO_WEIGHTS } from './cello.ts';
import { VIOLIN_WEIGHTS } from './violin.ts';

const TEXTS: Record<InstrumentName, string | null> = { violin: VIOLIN_WEIGHTS, viola: VIOLIN_WEIGHTS, cello: CELLO_WEIGHTS, 'double-bass': null };
const decoded = new Map<string, Weights>();

/** Weights fitted to professionals' fingerings: the viola uses the violin's a fifth lower; null for the bass, for which no data were at hand. */
export function weightsFor(instrument: InstrumentName): Weights | null {
  const text = TEXTS[instrument];
  if (text === null) return null;
  const known = decoded.get(instrument) ?? weightsFrom(text);
  decoded.set(instrument, known);
  return known;
}

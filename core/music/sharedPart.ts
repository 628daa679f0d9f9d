import type { Note, Part } from './part.ts';

const CELLO = /violonc|cello|celli|\b(vc|vlc|vcl)\b/i;
const BASS = /contrab|kontrab|contreb|\bbass([oi]|es)?\b|bässe|double\s?bass|\b(cb|kb|db)\b/i;
/** In a score without a part for the cellos it is theirs too. Common practice, no source. */
const BASS_LINE = /^\s*(bassi|basso|bässe)\s*\.?\s*$/i;
const OCTAVE = 12;

const lower = (note: Note): Note => (note.midi === undefined ? note : { ...note, sounding: note.midi - OCTAVE });

/**
 * A part that cellos and double basses read from one staff, as one part for each; the basses sound an octave (12 semitones) lower than written. All other parts as they are.
 * Example: "Violoncello e Contrabbasso" becomes "Violoncello e Contrabbasso (Vc.)" and "... (Cb.)"; a lone "Bassi" too where no part is for cello.
 */
export function sharedParts(parts: readonly Part[]): Part[] {
  const withoutCellos = !parts.some(({ instrument }) => instrument === 'cello');
  return parts.flatMap((part) => {
    const isShared = part.instrument !== null && ((CELLO.test(part.name) && BASS.test(part.name)) || (withoutCellos && BASS_LINE.test(part.name)));
    if (!isShared) return part;
    const basses = part.transposition === 0 ? { transposition: -OCTAVE, measures: part.measures.map((measure) => ({ ...measure, notes: measure.notes.map(lower) })) } : {};
    return [
      { ...part, name: `${part.name} (Vc.)`, instrument: 'cello' as const },
      { ...part, ...basses, name: `${part.name} (Cb.)`, instrument: 'double-bass' as const },
    ];
  });
}

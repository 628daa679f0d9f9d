import { checkPart } from './checkPart.ts';
import type { CheckInput, Finding, OtherSection } from './finding.ts';

/** One part of a piece as it is marked, with what its own section has settled. */
export interface PieceVoice extends Omit<CheckInput, 'others'> {
  id: string;
  /** As the other sections' sentences name it. */
  name: string;
}

const asOther = ({ name, part, marks, seats }: PieceVoice): OtherSection => ({ section: name, part, marks, seats });

/**
 * What the rules find in every part of a piece beside all the others: one answer a part, in the order given, each ranked as `checkPart` ranks. Lazy: a part is
 * read when its answer is asked for, so that whoever asks can tell how far it has come, or stop.
 * Throws where settings are of wrong form. Limits: those of `checkPart`.
 * Example: `[...wholePiece(voices)]` of two violin parts in unison, one bowed against the other, names the place in both.
 */
export function* wholePiece(voices: readonly PieceVoice[]): Generator<{ id: string; findings: Finding[] }> {
  // The lists of marks stay the same objects throughout: what was worked out of a section for one part is kept for the next.
  const sections = voices.map((voice) => ({ id: voice.id, other: asOther(voice) }));
  for (const { id, name: _, ...input } of voices) {
    const others = sections.filter((section) => section.id !== id).map(({ other }) => other);
    yield { id, findings: checkPart({ ...input, others }) };
  }
}

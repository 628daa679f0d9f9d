import { canSoundOn } from '../hand/place.ts';
import type { Instrument, StringNumber } from '../instruments/instrument.ts';
import type { Mark } from '../music/mark.ts';
import type { LineNote } from './line.ts';
import type { PlainFingering } from './output.ts';

type PlainNote = PlainFingering['notes'][number];

/** Steps after which a player cannot tell the finger without a figure. */
const TOLD: ReadonlySet<string> = new Set(['begins', 'extension', 'contraction', 'delayed-shift', 'substitution', 'chromatic-slide', 'shift-same-finger', 'shift-departing-finger', 'shift-arriving-finger', 'shift-over-open']);

/** An open string's pitch may be stopped on the string below, and the stopped note played open. */
function openOrStopped(instrument: Instrument, { midi }: LineNote): boolean {
  return instrument.openStrings.includes(midi) && ([1, 2, 3, 4] as StringNumber[]).some((string) => instrument.openStrings[string - 1]! < midi && canSoundOn(instrument, string, midi));
}

const reachOf = ({ step, extension = 0, finger }: PlainNote): Mark['value'] | null => {
  if (step.kind === 'contraction') return { kind: 'reach', reach: 'contraction' };
  const reaches = step.kind === 'extension' || (step.kind === 'delayed-shift' && extension !== 0);
  return reaches && finger !== 0 ? { kind: 'reach', reach: 'extension' } : null;
};

/**
 * The marks that say a fingering with as few figures as a player needs: the first note, the first after a shift, open against stopped where both are
 * there, extensions and contractions; the string where the hand goes to another with a shift, or begins above first position. Common practice, no source.
 * In the order of the fingering. Example: a scale in first position that begins on an open string is one figure and its other open strings.
 */
export function sparseMarks(instrument: Instrument, line: readonly LineNote[], { notes }: PlainFingering): Mark[] {
  const byId = new Map(line.map((note) => [note.id, note]));
  let string: number | null = null;
  return notes.flatMap((note, i): Mark[] => {
    const told = TOLD.has(note.step.kind) || note.step.kind === 'together' || openOrStopped(instrument, byId.get(note.id)!);
    const shifts = note.step.mm > 0 || i === 0;
    const namesString = shifts && note.finger !== 0 && note.string !== string && (i > 0 || note.position > 1);
    if (shifts || note.step.kind === 'crosses') string = note.string;
    const reach = reachOf(note);
    return [
      ...(told ? [{ note: note.id, value: { kind: 'finger' as const, finger: note.finger } }] : []),
      ...(namesString ? [{ note: note.id, value: { kind: 'string' as const, string: note.string } }] : []),
      ...(told && reach ? [{ note: note.id, value: reach }] : []),
    ];
  });
}

import { placeOnString } from '../../hand/place.ts';
import type { Millimetres, Semitones } from '../../instruments/instrument.ts';
import { handSemitones } from '../handAt.ts';
import type { PlainFingering } from '../output.ts';
import type { PlayedLine } from './playedLine.ts';
import { notesById } from './handFacts.ts';

/** Where the hand is while a note sounds. */
export interface HandMoment {
  note: string;
  /** 1 = highest. */
  string: number;
  finger: PlainFingering['notes'][number]['finger'];
  position: number;
  /** Where the string is stopped, from the nut; null on an open string. */
  stopped: Millimetres | null;
  /** The frame of the hand along the strings, from finger 1 to the place a fourth above it (the closed hand on cello and bass). */
  low: Millimetres;
  high: Millimetres;
  kind: PlainFingering['notes'][number]['step']['kind'];
  /** Audibility of the slide that leads here, 0 to 1. */
  slide: number;
  /** The hand comes here while this very note sounds. */
  follows: boolean;
}

/** From finger 1 to the end of the frame: a fourth on violin and viola, the closed hand on cello and bass. */
const frameOf = ({ instrument }: PlayedLine): Semitones => (instrument.positionsBy === 'letter' ? 5 : instrument.hand[3]!);

/** Thumb to first finger in thumb position. */
const THUMB_BELOW = 2;

/**
 * The hand over time for a picture: note by note where its finger stops the string and where its frame lies, in mm from the nut. Over an open string the
 * frame stays where it was. Throws where the fingering names a note that is not in the line. Example: violin, finger 1 in first position frames 31 to 90 mm.
 */
export function handPath(played: PlayedLine, { notes }: PlainFingering): HandMoment[] {
  const { instrument } = played;
  const noteOf = notesById(played.line);
  const mm = (semitones: Semitones): Millimetres => placeOnString(semitones, instrument.stringLength);
  const following = new Set(notes.flatMap(({ step }) => step.followsAt ?? []));
  let finger1: Semitones | null = null;
  const first = notes.find(({ finger }) => finger !== 0);
  const frameAt = (note: PlainFingering['notes'][number], above: Semitones): Semitones => {
    if (instrument.positionsBy === 'letter') return handSemitones(instrument, { string: 1, finger: 1, position: note.position, above, off: 0, respelled: 0 });
    if (note.finger === 'thumb') return above + THUMB_BELOW;
    const closed = above - instrument.hand[(note.finger as number) - 1]!;
    return note.extension === undefined || note.finger === 1 ? closed : closed - note.extension;
  };
  return notes.map((note): HandMoment => {
    const above = noteOf(note.id).midi - instrument.openStrings[note.string - 1]!;
    if (note.finger !== 0) finger1 = frameAt(note, above);
    finger1 ??= first ? frameAt(first, noteOf(first.id).midi - instrument.openStrings[first.string - 1]!) : instrument.hand[1]!;
    return {
      note: note.id, string: note.string, finger: note.finger, position: note.position, stopped: note.finger === 0 ? null : mm(above),
      low: mm(Math.max(0, finger1)), high: mm(Math.max(0, finger1) + frameOf(played)), kind: note.step.kind, slide: note.step.slide, follows: following.has(note.id),
    };
  });
}

import { effortOf, leastTime, type Effort } from '../../hand/moveTime.ts';
import type { Finger } from '../../music/mark.ts';
import type { LineNote } from '../line.ts';
import type { PlainFingering } from '../output.ts';
import type { PlayedLine } from './playedLine.ts';
import { stretchBetween, widestOf, type PlainNote, type Stretch } from './stretches.ts';

/** Index of a slide from which it is heard as one (one half at the threshold of hearing, 't Hart 1976). */
export const HEARD = 0.5;

/** What the hand does to come to a note, ready to be drawn or said. */
export interface StepFacts {
  note: string;
  /** The note it comes from; null on the first. */
  from: string | null;
  measure: number;
  string: number;
  /** That of the note it comes from. */
  fromString: number | null;
  finger: Finger;
  position: number;
  kind: PlainNote['step']['kind'];
  mm: number;
  /** Of the hand, upward positive. */
  semitones: number;
  /** Positions moved, upward positive, where both notes are stopped and positions are counted by letter. */
  positions: number | null;
  /** Which way the finger leaves the plain hand. */
  reach: 'up' | 'back' | null;
  /** From onset to onset. */
  availableMs: number;
  needsMs: number;
  effort: Effort;
  /** As the section is heard, and as one player would be. */
  slide: number;
  slideAlone: number;
  audible: boolean;
  /** The hand travels, whatever the step is called. */
  shifts: boolean;
  crosses: boolean;
  stretch: Stretch | null;
  /** What a double stop is to the hand; on its second note. */
  stop: PlainNote['stop'] | null;
  followsAt: string | null;
}

export interface FingeringFacts {
  steps: StepFacts[];
  shifts: number;
  crossings: number;
  openStrings: number;
  /** Audible ones, loudest first. */
  slides: StepFacts[];
  widest: Stretch | null;
}

/** Notes of a line by id. Throws on an id that is not among them. */
export function notesById(line: readonly LineNote[]): (id: string) => LineNote {
  const byId = new Map(line.map((note) => [note.id, note]));
  return (id) => {
    const note = byId.get(id);
    if (note === undefined) throw new Error(`No note ${id} in the line`);
    return note;
  };
}

/** The widest stretch to any note of what sounded before: the whole chord where there is one. */
function stretchTo(played: PlayedLine, notes: readonly PlainNote[], i: number, noteOf: (id: string) => LineNote): Stretch | null {
  const together: PlainNote[] = [];
  for (let j = i - 1; j >= 0; j -= 1) {
    together.push(notes[j]!);
    if (notes[i]!.step.kind !== 'together' || notes[j]!.step.kind !== 'together') break;
  }
  return widestOf(together.map((before) => stretchBetween(played, before, notes[i]!, noteOf)));
}

function factsAt(played: PlayedLine, notes: readonly PlainNote[], i: number, noteOf: (id: string) => LineNote): StepFacts {
  const { id, string, finger, position, extension = 0, stop = null, step } = notes[i]!;
  const before = notes[i - 1];
  return {
    note: id,
    from: before?.id ?? null,
    measure: noteOf(id).measure,
    string,
    fromString: before?.string ?? null,
    finger,
    position,
    kind: step.kind,
    mm: step.mm,
    semitones: step.semitones,
    positions: played.instrument.positionsBy === 'semitone' || before === undefined || before.finger === 0 || finger === 0 ? null : position - before.position,
    reach: extension === 0 ? null : extension > 0 ? 'up' : 'back',
    availableMs: step.ms,
    needsMs: Math.round(leastTime(step.mm) * 1000),
    effort: step.effort ?? effortOf(step.mm, step.ms / 1000),
    slide: step.slide,
    slideAlone: step.slideAlone ?? step.slide,
    audible: step.slide >= HEARD,
    shifts: step.mm > 0,
    crosses: before !== undefined && step.kind !== 'together' && before.string !== string,
    stretch: stretchTo(played, notes, i, noteOf),
    stop,
    followsAt: step.followsAt ?? null,
  };
}

/** Sums of what a row of steps asks for. */
export function totalsOf(steps: readonly StepFacts[]): Omit<FingeringFacts, 'steps'> {
  return {
    shifts: steps.filter((step) => step.shifts).length,
    crossings: steps.filter((step) => step.crosses).length,
    openStrings: steps.filter((step) => step.finger === 0).length,
    slides: steps.filter((step) => step.audible).sort((a, b) => b.slide - a.slide),
    widest: widestOf(steps.map((step) => step.stretch)),
  };
}

/**
 * A fingering step by step, and what it asks for in all: shifts, crossings, open strings, audible slides, the widest stretch. Lengths in mm, times in ms.
 * Throws where the fingering names a note that is not in the line. Example: a scale in first position has no shift, and its slides are empty.
 */
export function handFacts(played: PlayedLine, { notes }: PlainFingering): FingeringFacts {
  const noteOf = notesById(played.line);
  const steps = notes.map((_, i) => factsAt(played, notes, i, noteOf));
  return { steps, ...totalsOf(steps) };
}

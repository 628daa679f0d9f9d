import { effortOf, type Effort } from '../hand/moveTime.ts';
import type { Instrument } from '../instruments/instrument.ts';
import type { Finger } from '../music/mark.ts';
import { THUMB } from './frame.ts';
import { halfPositions } from './halfPosition.ts';
import { positionNumber } from './positionNumber.ts';
import type { StepKind } from './steps/step.ts';
import { stopKind, type StopKind } from './stopKind.ts';
import type { FingeredNote, Fingering } from './suggest.ts';

/** A fingering in the form the command line prints and the browser shows. */
export interface PlainFingering {
  cost: number;
  terms: Record<string, number>;
  notes: {
    id: string;
    /** 1 = highest. */
    string: number;
    finger: Finger;
    /** 0 = half position. */
    position: number;
    /** Semitones a finger leaves the plain hand; absent where it does not. */
    extension?: number;
    /** What a double stop is to the hand; on its second note. */
    stop?: StopKind;
    /**
     * `slide` is heard in the section, `slideAlone` of one player, given where they differ. `effort` is that of the hand's travel in the time there is.
     * `keepsFinger`: the finger before may stay down.
     */
    step: { kind: StepKind | 'begins' | 'together'; mm: number; semitones: number; ms: number; slide: number; slideAlone?: number; effort?: Effort; keepsFinger?: true; followsAt?: string };
  }[];
}

const rounded = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;

/** Finger 1 of the cello stands in the extended hand when the note after it, or else before it, is stopped by that hand. */
function isExtended({ notes }: Fingering, i: number): boolean {
  const { place } = notes[i]!;
  if (place.finger !== 1) return place.off === 1;
  const sameHand = [notes[i + 1], notes[i - 1]].find((other) => other !== undefined && other.place.position === place.position && other.place.finger > 1);
  return sameHand?.place.off === 1;
}

/** The finger before may stay down: the hand stays, and the next finger falls above it on its string or on another string. */
function keepsFinger(before: FingeredNote | undefined, { place, step }: FingeredNote): boolean {
  const last = before?.place;
  if (!last || !step || step.mm > 0 || last.finger === 0 || last.finger === place.finger) return false;
  return last.string !== place.string || place.above > last.above;
}

/** A fingering as plain values, rounded for reading: mm to a tenth, ms whole, slide and costs to a thousandth. */
export function plainFingering(instrument: Instrument, fingering: Fingering): PlainFingering {
  const half = halfPositions(instrument, fingering.notes.map(({ place }) => place));
  return {
    cost: rounded(fingering.cost, 4),
    terms: Object.fromEntries(Object.entries(fingering.terms).map(([name, cost]) => [name, rounded(cost, 4)])),
    notes: fingering.notes.map((note, i) => ({
      id: note.id,
      string: note.place.string,
      finger: note.place.finger === THUMB ? 'thumb' : (note.place.finger as Finger),
      position: half[i] ? 0 : positionNumber(instrument, note.place, isExtended(fingering, i)),
      ...(note.place.off === 0 ? {} : { extension: note.place.off }),
      ...(note.step === null && i > 0 ? { stop: stopKind(instrument, fingering.notes[i - 1]!.place, note.place) } : {}),
      step: plainStep(note, fingering.notes[i - 1]),
    })),
  };
}

function plainStep(note: FingeredNote, before: FingeredNote | undefined): PlainFingering['notes'][number]['step'] {
  const { step, available, slideAlone, followsAt } = note;
  if (step === null) return { kind: before ? 'together' : 'begins', mm: 0, semitones: 0, ms: 0, slide: 0 };
  return {
    kind: step.kind,
    mm: rounded(step.mm, 1),
    semitones: step.semitones,
    ms: Math.round(available * 1000),
    slide: rounded(step.slide, 3),
    ...(slideAlone === step.slide ? {} : { slideAlone: rounded(slideAlone, 3) }),
    ...(step.mm === 0 ? {} : { effort: effortOf(step.mm, available) }),
    ...(keepsFinger(before, note) ? { keepsFinger: true } : {}),
    ...(followsAt === undefined ? {} : { followsAt }),
  };
}

import type { Instrument } from '../instruments/instrument.ts';
import type { Finger } from '../music/mark.ts';
import { THUMB } from './frame.ts';
import { positionNumber } from './positionNumber.ts';
import type { StepKind } from './steps/step.ts';
import type { Fingering } from './suggest.ts';

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
    step: { kind: StepKind | 'begins' | 'together'; mm: number; semitones: number; ms: number; slide: number; followsAt?: string };
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

/** A fingering as plain values, rounded for reading: mm to a tenth, ms whole, slide and costs to a thousandth. */
export function plainFingering(instrument: Instrument, fingering: Fingering): PlainFingering {
  return {
    cost: rounded(fingering.cost, 4),
    terms: Object.fromEntries(Object.entries(fingering.terms).map(([name, cost]) => [name, rounded(cost, 4)])),
    notes: fingering.notes.map(({ id, place, step, available, followsAt }, i) => ({
      id,
      string: place.string,
      finger: place.finger === THUMB ? 'thumb' : (place.finger as Finger),
      position: positionNumber(instrument, place, isExtended(fingering, i)),
      ...(place.off === 0 ? {} : { extension: place.off }),
      step: {
        kind: step?.kind ?? (i === 0 ? 'begins' : 'together'),
        mm: rounded(step?.mm ?? 0, 1),
        semitones: step?.semitones ?? 0,
        ms: Math.round(available * 1000),
        slide: rounded(step?.slide ?? 0, 3),
        ...(followsAt === undefined ? {} : { followsAt }),
      },
    })),
  };
}

import type { Effort } from '../../hand/moveTime.ts';
import type { Zone } from '../../hand/reach.ts';
import type { Finger } from '../../music/mark.ts';
import type { PlainFingering } from '../output.ts';
import type { StopKind } from '../stopKind.ts';

type Kind = PlainFingering['notes'][number]['step']['kind'];
export type Way = 'up' | 'back';

/** What the two sides of a comparison are called. */
export type Names = readonly [a: string, b: string];

/** Everything an explanation of the hand says, as pieces; another language is another table. */
export interface HandWords {
  kind: Record<Kind, string>;
  stop: Record<StopKind, string>;
  effort: Record<Effort, string>;
  zone: Record<Zone, string>;
  /** Costs by name; one that is missing is called by its name. */
  terms: Readonly<Record<string, string>>;
  finger(finger: Finger): string;
  string(name: string): string;
  position(position: number): string;
  /** A measure by its ordinal or its printed number. */
  measure(ordinal: number | string): string;
  measures(from: number | string, to: number | string): string;
  pitch(letter: string, alter: number): string;
  /** "the B flat", "the second B flat", with its measure where that is not plain. */
  note(pitch: string, which: number, measure: string | null): string;
  letters(steps: number, up: boolean): string;
  semitones(count: number, up: boolean): string;
  travel(mm: number, needsMs: number, availableMs: number, effort: string): string;
  reaches(finger: string, way: Way | null): string;
  slide(audible: boolean): string;
  slideAlone: string;
  follows(note: string): string;
  stretch(fingers: string, mm: number, zone: string): string;
  clause: {
    stays(position: string, string: string | null): string;
    shiftsTo(position: string, string: string | null, note: string): string;
    shiftsOverOpen(position: string): string;
    substitutes(finger: string, note: string): string;
    shifts(times: number, string: string | null): string;
    delayed(note: string, finger: string, follows: string): string;
    crossesTo(string: string, note: string): string;
    crossesAndBack(string: string, note: string, back: string): string;
    crosses(times: number): string;
    reachesFor(note: string, finger: string, way: Way | null): string;
    reaches(times: number): string;
    open(notes: readonly string[]): string;
    slidesInto(note: string): string;
    slidesIntoMeasure(measure: string): string;
    slides(times: number, note: string): string;
    noSlide: string;
    fingers(fingers: readonly string[]): string;
    /** Where a note lies, when the fingers are the same. */
    lies(position: string, string: string | null, note: string): string;
  };
  hand: {
    tooWide(fingers: string, mm: number, note: string): string;
    instead(where: string, clauses: string): string;
    keeps: string;
    loses(notes: readonly string[]): string;
    noWay(notes: readonly string[]): string;
  };
  join(clauses: readonly string[]): string;
  sideBySide(where: string, names: Names, a: string, b: string): string;
  totals(name: string, counts: { shifts: number; crossings: number; openStrings: number; slides: number }, stretch: string | null): string;
  costs(name: string, more: number, most: readonly { term: string; difference: number }[]): string;
  alike: string;
  caution: string;
}

import { canBePlayedSo } from '../../../../core/fingering/canBePlayedSo.ts';
import { lineOfPart } from '../../../../core/fingering/partLine.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import { carryBowing, type MarkedPart } from '../../../../core/matching/carryBowing.ts';
import type { Figure } from '../../../../core/matching/figure.ts';
import { isOfTheBow, type Mark, type MarkValue } from '../../../../core/music/mark.ts';
import type { Part } from '../../../../core/music/part.ts';

/** What would be laid at one place, and how many fingerings stay behind because they cannot be played there. */
export interface Copy {
  marks: Mark[];
  /** Fingers and strings that go along. */
  fingered: number;
  behind: number;
}

const OF_THE_HAND: readonly MarkValue['kind'][] = ['finger', 'string', 'reach', 'harmonic'];

const forAll = ({ seats }: Mark): boolean => seats === undefined || seats === 'all';

/** Fingers, strings and reaches of one note, as they would stand on another `by` semitones off; null where that one cannot be played so, or lies a string further, so that nobody would mean the same one. */
function handOn(part: Part, measure: number, note: string, by: number, values: readonly MarkValue[]): MarkValue[] | null {
  const line = lineOfPart(part, measure, measure).line.find(({ id }) => id === note);
  if (!line || part.instrument === null) return null;
  const finger = values.find((value) => value.kind === 'finger');
  const string = values.find((value) => value.kind === 'string');
  const pin = { ...(finger ? { finger: finger.finger } : {}), ...(string ? { string: string.string } : {}) };
  const harmonic = values.find((value) => value.kind === 'harmonic');
  const touched = harmonic ? { ...line, harmonic: harmonic.harmonic } : line;
  const substitute = finger?.substitution;
  const instrument = instrumentNamed(part.instrument);
  if (string && Math.abs(by) >= instrument.openStrings[0] - instrument.openStrings[1]) return null;
  const both = canBePlayedSo(instrument, touched, pin) && (substitute === undefined || canBePlayedSo(instrument, touched, { ...pin, finger: substitute }));
  return both ? [...values] : null;
}

/** Printed slurs alone are no reason to bow another place otherwise: the bowing is carried where something of it is marked. */
const isBowed = ({ marks }: MarkedPart, { run }: Figure): boolean => marks.some((mark) => isOfTheBow(mark.value) && run.notes.some(([source]) => source === mark.note));

/** Marks of a figure carried to one place: bows anywhere, what concerns the hand only where it can be played. Only marks for the whole section go along. */
export function copyFor(from: MarkedPart, figure: Figure): Copy {
  const { run } = figure;
  const copy: Copy = { marks: isBowed(from, figure) ? carryBowing(from, from, run).marks : [], fingered: 0, behind: 0 };
  const measureOf = new Map(from.part.measures.flatMap(({ ordinal, notes }) => notes.map(({ id }) => [id, ordinal] as const)));
  const standing = (note: string) => from.marks.filter((mark) => mark.note === note && forAll(mark)).map(({ value }) => value);
  for (const [source, target] of run.notes) {
    const values = standing(source);
    const hand = values.filter(({ kind }) => OF_THE_HAND.includes(kind));
    const there = hand.length ? handOn(from.part, measureOf.get(target)!, target, figure.by, hand) : [];
    if (there) copy.fingered += there.length;
    else copy.behind += hand.length;
    const words = values.filter(({ kind }) => kind === 'text');
    const already = standing(target).map((value) => JSON.stringify(value));
    copy.marks.push(...[...(there ?? []), ...words].filter((value) => !already.includes(JSON.stringify(value))).map((value) => ({ note: target, value })));
  }
  return copy;
}

import { partBowings, type PlainBowing } from '../../core/bowing/direction/partBowings.ts';
import { turned } from '../../core/bowing/strokes.ts';
import { seatMarks } from '../../core/check/seatMarks.ts';
import { CheckSettings } from '../../core/check/settings.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import type { Part } from '../../core/music/part.ts';
import { tempoMap } from '../../core/music/seconds.ts';
import { quarters } from '../../core/music/time.ts';
import type { HairAnswer, HairBow, HairQuestion } from './messages.ts';

/** Seconds of bows are rounded to this. */
const ROUNDING = 1e-4;

/** A split slur is two bows, each half as long. */
function bowsOf({ strokes, along, short }: PlainBowing, isShared: (notes: readonly string[]) => boolean, measureAt: (second: number) => number): HairBow[] {
  const firstOf = (stroke: number) => along.findIndex((one) => one.stroke === stroke);
  return along.map(({ stroke, from, to, speed, pace }, i) => {
    const { notes, measure, begins, ends, direction, reason, split, marked } = strokes[stroke]!;
    const second = along[i - 1]?.stroke === stroke;
    const middle = (begins + ends) / 2;
    const shared = isShared(notes);
    const lack = shared ? undefined : short.find((one) => one.stroke === stroke);
    return {
      notes, reason,
      measure: second ? measureAt(middle) : measure,
      from, to, speed, pace, shared,
      marked: marked === true,
      direction: second ? turned(direction) : direction,
      begins: second ? middle : begins,
      ends: split && !second ? middle : ends,
      short: lack && !second ? { kind: lack.kind, by: lack.short, fix: lack.fix.map((one) => ({ bow: firstOf(one.stroke), pace: one.pace })) } : null,
    };
  });
}

/** Where the bow lies along its hair all through a part, as its marks stand for a seat. Throws where the part names no string instrument. */
export function hairFor(part: Part, { marks, seats, seat, settings }: HairQuestion): HairAnswer {
  if (part.instrument === null) throw new Error('The part names no string instrument');
  const { bowSeconds, assumedDynamic, assumedTempo } = CheckSettings.parse(settings);
  const instrument = instrumentNamed(part.instrument);
  const tempo = tempoMap(part, assumedTempo);
  const { forAll, groups } = seatMarks(part, marks, seats);
  const signsOn = groups.find((group) => seat !== 'all' && group.seats.includes(seat))?.marksOn ?? forAll;
  const isShared = (notes: readonly string[]) => seat === 'all' && groups.length > 1 && groups.every(({ marksOn }) => notes.some((note) => marksOn(note).changes.length > forAll(note).changes.length));
  const measures = { from: 1, to: part.measures.length };
  const bowings = partBowings({ part, instrument, tempo, signsOn, table: bowSeconds, assumedDynamic, measures, best: 1 });
  const barlines = part.measures.map(({ ordinal, start }) => ({ ordinal, second: tempo.at(quarters(start)) }));
  const measureAt = (at: number) => barlines.findLast(({ second }) => second <= at + ROUNDING)?.ordinal ?? 1;
  const last = part.measures.at(-1);
  return {
    hair: instrument.bowHair,
    voices: bowings.map((bowing) => bowsOf(bowing, isShared, measureAt)),
    barlines,
    end: last ? tempo.at(quarters(last.start) + quarters(last.length)) : 0,
  };
}

import type { HandMoment } from '../../../../core/fingering/explain/handPath.ts';
import { placeOnString } from '../../../../core/hand/place.ts';
import type { Instrument, Millimetres, Semitones } from '../../../../core/instruments/instrument.ts';

/** A finger over the board: where along the string it falls, and whether it is the one that sounds. */
export interface BoardFinger {
  finger: 'thumb' | '1' | '2' | '3' | '4';
  mm: Millimetres;
  sounding: boolean;
}

/** The board in mm: along it from the nut, across it from the middle, string 1 at negative y. */
export interface BoardShapes {
  length: Millimetres;
  /** End of the fingerboard. */
  end: Millimetres;
  /** String by string from the highest: y at the nut and at the bridge, and how thick it is drawn. */
  strings: { name: string; nut: Millimetres; bridge: Millimetres; thick: Millimetres }[];
  frame: { low: Millimetres; high: Millimetres };
  fingers: BoardFinger[];
  /** 1 = highest. */
  string: number;
  open: boolean;
  /** How far the sounding finger lies beyond the frame, from its edge. */
  reach: { from: Millimetres; to: Millimetres; mm: Millimetres } | null;
  /** The hand stands over the thumb. */
  thumb: boolean;
  ticks: Millimetres[];
}

/** Outer strings apart, at the nut and at the bridge: from memory, only drawn. */
const APART: Record<Instrument['name'], readonly [Millimetres, Millimetres]> = { violin: [16.5, 33.5], viola: [18, 36], cello: [22, 47], 'double-bass': [29, 82] };
/** Highest and lowest string: from memory, only drawn. */
const THICK: Record<Instrument['name'], readonly [Millimetres, Millimetres]> = { violin: [0.26, 0.8], viola: [0.4, 1.1], cello: [0.7, 1.7], 'double-bass': [1.1, 2.6] };
/** From here finger 1 of cello and bass stands over the thumb, which lies a tone below it; the other fingers as in a major scale. */
const THUMB_FROM: Semitones = 13.5;
const THUMB_HAND: readonly Semitones[] = [0, 2, 3];
/** A finger's breadth of the frame's edge is no reach. */
const EDGE: Millimetres = 3;
/** Least room between the sounding finger and the next, as a share of the string: chosen, not measured. */
const BREADTH = 0.03;
const SCALE: Record<Instrument['name'], Millimetres> = { violin: 50, viola: 50, cello: 100, 'double-bass': 200 };

const semitonesAt = (mm: Millimetres, length: Millimetres): Semitones => -12 * Math.log2(1 - mm / length);

/** Where y lies on a string at this distance from the nut. */
export const acrossAt = ({ length, strings }: BoardShapes, string: number, mm: Millimetres): Millimetres => {
  const { nut, bridge } = strings[string - 1]!;
  return nut + ((bridge - nut) * mm) / length;
};

function fingersOf(instrument: Instrument, { finger, low, stopped }: HandMoment, thumb: boolean): BoardFinger[] {
  const { stringLength } = instrument;
  const one = semitonesAt(low, stringLength);
  const at = (above: Semitones): Millimetres => placeOnString(one + above, stringLength);
  // On the bass finger 3 lies with 4, and only the one that is marked is drawn.
  const none = instrument.name === 'double-bass' && !thumb ? (finger === 3 ? '4' : '3') : '';
  const plain = (thumb ? THUMB_HAND : instrument.hand).map((above, i) => ({ finger: String(i + 1) as BoardFinger['finger'], mm: at(above), sounding: false })).filter((each) => each.finger !== none);
  const hand: BoardFinger[] = thumb ? [{ finger: 'thumb', mm: at(-2), sounding: false }, ...plain] : plain;
  if (stopped === null) return hand;
  const name = String(finger) as BoardFinger['finger'];
  const place = hand.findIndex((each) => each.finger === name);
  const breadth = stringLength * BREADTH;
  // A finger that reaches leaves no room for those that would lie past it, and pushes aside those it touches.
  const kept = hand.flatMap((each, i): BoardFinger[] => {
    if (each.finger === name || (i < place ? each.mm >= stopped : each.mm <= stopped)) return [];
    return [{ ...each, mm: i < place ? Math.min(each.mm, stopped - breadth) : Math.max(each.mm, stopped + breadth) }];
  });
  return [...kept, { finger: name, mm: stopped, sounding: true }].sort((a, b) => a.mm - b.mm);
}

/**
 * The fingerboard with the hand over it as it is on one note, to scale. Lengths in mm. Where a plain finger lies follows from the hand's frame by equal temperament.
 * Example: violin, finger 3 in first position on the A string: the third finger is black at 82.
 */
export function boardShapes(instrument: Instrument, moment: HandMoment): BoardShapes {
  const { name, stringLength: length, top, stringNames } = instrument;
  const { low, high, stopped, string } = moment;
  const [atNut, atBridge] = APART[name];
  const [thin, thick] = THICK[name];
  const strings = stringNames.map((called, i) => ({ name: called, nut: atNut * (i / 3 - 0.5), bridge: atBridge * (i / 3 - 0.5), thick: thin + ((thick - thin) * i) / 3 }));
  const thumb = instrument.positionsBy === 'semitone' && semitonesAt(low, length) >= THUMB_FROM;
  const fingers = fingersOf(instrument, moment, thumb);
  const edge = stopped === null || moment.finger === 'thumb' ? null : stopped > high + EDGE ? high : stopped < low - EDGE ? low : null;
  const step = SCALE[name];
  return {
    length, end: placeOnString(top, length), strings, frame: { low, high }, fingers, string, open: stopped === null, thumb,
    reach: edge === null || stopped === null ? null : { from: edge, to: stopped, mm: Math.abs(stopped - edge) },
    ticks: Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step),
  };
}

import type { Place } from '../../../core/fingering/frame.ts';
import { withPin, type Prepared } from '../../../core/fingering/prepare.ts';
import { positionNumber } from '../../../core/fingering/positionNumber.ts';
import type { FingeringRequest } from '../../../core/fingering/request.ts';
import { holdsTogether } from '../../../core/fingering/stops.ts';
import { cheapestPath } from '../../../core/search/cheapestPath.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import type { Instrument } from '../../../core/instruments/instrument.ts';
import type { Weights } from '../../../core/fingering/fit/chain.ts';
import type { Label, Piece } from './pieces.ts';

/** One place per note of the piece; null where the engine refuses. */
export type Taken = (Place | null)[];

export function requestFor(instrument: Instrument, piece: Piece, weights: Weights | null): FingeringRequest {
  return { instrument, line: piece.line, tempo: 90, pins: new Map(), aim: 'usual', hand: USUAL_HAND, players: 1, sliding: 1, weights };
}

export function best(prepared: Prepared): Taken {
  const taken: Taken = prepared.request.line.map(() => null);
  const path = cheapestPath(prepared.lattice, prepared.toEnd);
  path?.states.forEach((state, i) => prepared.layers[i]!.notes.forEach((note, k) => (taken[note] = prepared.layers[i]!.states[state]![k]!)));
  return taken;
}

/** As a musician counts a difference: string, position and finger; on the cello the shape of the hand too. */
export const agrees = (place: Place | null, label: Label): boolean =>
  place !== null && place.string === label.string && place.finger === label.finger && place.position === label.position;

export interface Shares {
  string: number;
  position: number;
  finger: number;
  triple: number;
  notes: number;
}

export function sharesOf(piece: Piece, taken: Taken): Shares {
  const sums = { string: 0, position: 0, finger: 0, triple: 0, notes: 0 };
  for (const player of piece.players) {
    player.forEach((label, i) => {
      if (label === null) return;
      const place = taken[i] ?? null;
      sums.notes += 1;
      if (place?.string === label.string) sums.string += 1;
      if (place?.position === label.position) sums.position += 1;
      if (place?.finger === label.finger) sums.finger += 1;
      if (agrees(place, label)) sums.triple += 1;
    });
  }
  return sums;
}

/** Share of labels among the three likeliest places of their note. */
export function topThree(piece: Piece, prepared: Prepared): { hits: number; notes: number } {
  const likely: Place[][] = piece.line.map(() => []);
  prepared.layers.forEach((layer, i) => {
    layer.notes.forEach((note, k) => {
      const weight = new Map<string, { place: Place; p: number }>();
      layer.states.forEach((state, s) => {
        const place = state[k]!;
        const key = `${place.string},${place.position},${place.finger}`;
        weight.set(key, { place, p: (weight.get(key)?.p ?? 0) + prepared.marginals.states[i]![s]! });
      });
      likely[note] = [...weight.values()].sort((a, b) => b.p - a.p).slice(0, 3).map(({ place }) => place);
    });
  });
  const sums = { hits: 0, notes: 0 };
  for (const player of piece.players) player.forEach((label, i) => label && ((sums.notes += 1), likely[i]!.some((place) => agrees(place, label)) && (sums.hits += 1)));
  return sums;
}

/** The label as a pin; where no place is all of it (about 2 % are noise) as much of it as one is. */
function pinned(prepared: Prepared, piece: Piece, i: number, label: Label): Prepared {
  const { id } = piece.line[i]!;
  const { string } = label;
  const finger = label.finger === 5 ? 'thumb' : (label.finger as 0);
  const position = positionNumber(prepared.request.instrument, { ...label, above: 0, off: label.off ?? 0, respelled: 0, string: string as 1 });
  return withPin(prepared, id, { string, finger, position }) ?? withPin(prepared, id, { string, position }) ?? withPin(prepared, id, { string, finger }) ?? withPin(prepared, id, { string }) ?? prepared;
}

/** Agreement on the other notes when each player's first note of every measure is settled. */
export function withFirstNotes(piece: Piece, start: Prepared): { hits: number; notes: number } {
  const sums = { hits: 0, notes: 0 };
  const isFirst = (i: number): boolean => i === 0 || piece.line[i]!.measure !== piece.line[i - 1]!.measure;
  for (const player of piece.players) {
    let prepared = start;
    player.forEach((label, i) => label && isFirst(i) && (prepared = pinned(prepared, piece, i, label)));
    const taken = best(prepared);
    player.forEach((label, i) => label && !isFirst(i) && ((sums.notes += 1), agrees(taken[i]!, label) && (sums.hits += 1)));
  }
  return sums;
}

/** Notes a player has to correct, going from left to right and solving again after each; those among them whose label is no place of the engine; and the notes in all. */
export function corrections(piece: Piece, start: Prepared): { made: number; outside: number; notes: number } {
  const sums = { made: 0, outside: 0, notes: 0 };
  const reachable = piece.line.map(() => [] as Place[]);
  start.layers.forEach(({ notes, states }) => notes.forEach((note, k) => states.forEach((state) => reachable[note]!.push(state[k]!))));
  for (const player of piece.players) {
    let prepared = start;
    let taken = best(prepared);
    player.forEach((label, i) => {
      if (label === null) return;
      sums.notes += 1;
      if (agrees(taken[i]!, label)) return;
      sums.made += 1;
      if (!reachable[i]!.some((place) => agrees(place, label))) sums.outside += 1;
      prepared = pinned(prepared, piece, i, label);
      taken = best(prepared);
    });
  }
  return sums;
}

/** Places where the position changes: found, made and real. */
export function shiftCounts(piece: Piece, taken: Taken): { both: number; ours: number; theirs: number } {
  const sums = { both: 0, ours: 0, theirs: 0 };
  for (const player of piece.players) {
    for (let i = 1; i < taken.length; i += 1) {
      const [a, b] = [player[i - 1], player[i]];
      if (!a || !b) continue;
      const theirs = a.position !== b.position;
      const ours = taken[i - 1]?.position !== taken[i]?.position;
      sums.both += ours && theirs ? 1 : 0;
      sums.ours += ours ? 1 : 0;
      sums.theirs += theirs ? 1 : 0;
    }
  }
  return sums;
}

/** Notes refused, and chords that no hand holds. */
export function impossible(instrument: Instrument, piece: Piece, taken: Taken): number {
  let count = taken.filter((place) => place === null).length;
  piece.line.forEach((note, i) => {
    const [a, b] = [taken[i - 1], taken[i]];
    if (note.chord && a && b && !holdsTogether(instrument, [a, b]) && Math.abs(a.string - b.string) < 2) count += 1;
  });
  return count;
}


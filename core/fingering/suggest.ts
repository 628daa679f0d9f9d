import { placeCosts, stepBetween, stepCosts } from './handCosts.ts';
import type { Place } from './frame.ts';
import { isByMoves, type Prepared } from './prepare.ts';
import type { Player } from './steps/player.ts';
import { rareStep } from './rare.ts';
import { handStep, type HandStep } from './steps/step.ts';
import { waysToPlay } from './ways.ts';

/** One note of a fingering, and the step that led to it. */
export interface FingeredNote {
  id: string;
  place: Place;
  /** Null on the first note and inside a chord. */
  step: HandStep | null;
  /** Time from the onset before; seconds. */
  available: number;
  /** Audibility of the step's slide were one player alone, 0 to 1. */
  slideAlone: number;
  /** Where the hand follows a delayed shift. */
  followsAt?: string;
}

export interface Fingering {
  cost: number;
  /** What the cost is made of; adds up to it. */
  terms: Record<string, number>;
  notes: FingeredNote[];
}

/** Names of the costs that come from the professionals' fingerings: expected differences from them, in notes, in steps, in where the hand moves; and steps they hardly ever make. */
const UNUSUAL_PLACE = 'unusual-place';
const UNUSUAL_STEP = 'unusual-step';
const UNUSUAL_MOVE = 'unusual-move';
const RARE_STEP = 'rare-step';
/** The same figure fingered otherwise elsewhere. */
const SEQUENCE = 'sequence';

function termsOf(prepared: Prepared, states: readonly number[]): Record<string, number> {
  const terms: Record<string, number> = {};
  const add = (name: string, cost: number): void => void (terms[name] = (terms[name] ?? 0) + cost);
  const { layers, marginals, hand, lattice, balance, setting } = prepared;
  states.forEach((state, i) => {
    const layer = layers[i]!;
    if (balance.trust > 0) add(UNUSUAL_PLACE, balance.trust * (1 - marginals.states[i]![state]!));
    if (balance.sequence > 0) add(SEQUENCE, balance.sequence * (prepared.sequences.get(i)?.[state] ?? 0));
    placeCosts(setting, balance.terms, layer, layer.states[state]!, add);
    if (i === 0) return;
    if (balance.trust > 0) {
      const step = states[i - 1]! * layer.states.length + state;
      // What the lattice holds beyond the costs of the hand.
      const rare = balance.rare > 0 ? balance.rare * rareStep(marginals.steps[i]!, layer.states.length, step) : 0;
      const unusual = lattice.steps[i]![step]! - hand.steps[i]![step]! - rare;
      const byMoves = isByMoves(prepared, i);
      add(UNUSUAL_STEP, byMoves ? 0 : unusual);
      add(UNUSUAL_MOVE, byMoves ? unusual : 0);
      add(RARE_STEP, rare);
    }
    stepCosts(setting, balance.terms, layers[i - 1]!, layer, layers[i - 1]!.states[states[i - 1]!]!, layer.states[state]!, add);
  });
  return terms;
}

const ALONE = (player: Player): Player => ({ ...player, players: 1, sliding: 1 });

function notesOf(prepared: Prepared, states: readonly number[]): FingeredNote[] {
  const { layers, setting } = prepared;
  const notes = states.flatMap((state, i): FingeredNote[] => {
    const layer = layers[i]!;
    const held = layer.states[state]!;
    const between = i === 0 ? null : stepBetween(setting, layers[i - 1]!, layer, layers[i - 1]!.states[states[i - 1]!]!, held);
    const alone = between && setting.player.players > 1 ? handStep(ALONE(setting.player), between.first, between.second, between.timing).slide : (between?.step.slide ?? 0);
    return held.map((place, k) => {
      const arrives = k === 0 && between !== null;
      return { id: setting.line[layer.notes[k]!]!.id, place, step: arrives ? between.step : null, available: arrives ? between.timing.available : 0, slideAlone: arrives ? alone : 0 };
    });
  });
  return notes.map((note, i) => withFollowing(note, notes[i + 1]));
}

/** A reach whose hand then goes the same way is a delayed shift, and the hand follows on the next note. */
function withFollowing(note: FingeredNote, next: FingeredNote | undefined): FingeredNote {
  if (note.step?.kind === 'delayed-shift') return { ...note, followsAt: note.id };
  const reaches = note.step?.kind === 'extension';
  if (!reaches || !next?.step || next.step.semitones * note.place.off <= 0 || next.place.string !== note.place.string) return note;
  return { ...note, step: { ...note.step!, kind: 'delayed-shift' }, followsAt: next.id };
}

/**
 * The `count` best fingerings that differ musically (string or place of the hand, over several notes), best first, each with what every step is.
 * The first is exact over the states of the line; deterministic. Empty where the line has no note that can be played.
 */
export function suggest(prepared: Prepared, count: number): Fingering[] {
  if (prepared.layers.length === 0) return [];
  return waysToPlay(prepared, count).map(({ states, cost }) => ({ cost, terms: termsOf(prepared, states), notes: notesOf(prepared, states) }));
}

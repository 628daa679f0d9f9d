import { audibleSlide } from '../../hand/audibleSlide.ts';
import { leastTime, slideSeconds } from '../../hand/moveTime.ts';
import { placeOnString } from '../../hand/place.ts';
import { reachOf, zoneOf, type Zone } from '../../hand/reach.ts';
import type { Millimetres, Semitones } from '../../instruments/instrument.ts';
import { hertzOf } from '../../music/pitch.ts';
import type { Seconds } from '../../music/seconds.ts';
import type { Place } from '../frame.ts';
import { handSemitones, handTravel } from '../handAt.ts';
import type { Player } from './player.ts';
import type { StepTiming } from './timing.ts';
import { fingerTravel, stopped } from './travel.ts';

export type StepKind =
  | 'stays'
  | 'crosses'
  | 'extension'
  | 'contraction'
  | 'delayed-shift'
  | 'substitution'
  | 'chromatic-slide'
  | 'shift-same-finger'
  | 'shift-departing-finger'
  | 'shift-arriving-finger'
  | 'shift-over-open';

/** What the hand does from one note to the next. */
export interface HandStep {
  kind: StepKind;
  /** Travel of the hand along the strings. */
  mm: Millimetres;
  /** The same in semitones, upward positive. */
  semitones: Semitones;
  /** The least time this travel needs. */
  needs: Seconds;
  /** Audibility of its slide, 0 to 1. */
  slide: number;
  /** Distance between the two stopping fingers where both are held to in one hand. */
  span: Millimetres;
  zone: Zone;
}

interface Span {
  span: Millimetres;
  zone: Zone;
  inOrder: boolean;
}

/** Fingers that are never held to in one hand. */
const APART: Span = { span: 0, zone: 'comfortable', inOrder: false };

function spanOf(player: Player, a: Place, b: Place): Span {
  if (!stopped(a) || !stopped(b) || a.finger === b.finger) return APART;
  const at = (place: Place): Millimetres => placeOnString(place.above, player.instrument.stringLength);
  const signed = (at(b) - at(a)) * Math.sign(b.finger - a.finger);
  const zone = zoneOf(reachOf(player.instrument.name, a.finger, b.finger, player.hand), Math.abs(signed));
  return { span: Math.abs(signed), zone, inOrder: signed > 0 };
}

/** The kind of a step within one position: a finger that leaves its place outward, or two semitones, extends; one that draws in contracts. */
function inPosition(a: Place, b: Place): StepKind {
  if (b.off === 0 || b.off === a.off || b.finger === 0) return a.string === b.string ? 'stays' : 'crosses';
  const outward = b.finger >= 3 ? b.off > 0 : b.off < 0;
  return outward || Math.abs(b.off) > 1 ? 'extension' : 'contraction';
}

function shiftKind(a: Place, b: Place, canFollow: boolean): StepKind {
  if (a.finger === 0 || b.finger === 0 || a.harmonic) return 'shift-over-open';
  if (a.string === b.string && a.above === b.above) return 'substitution';
  if (a.finger === b.finger) return a.string === b.string && Math.abs(a.above - b.above) === 1 ? 'chromatic-slide' : 'shift-same-finger';
  if (canFollow) return 'delayed-shift';
  return a.string === b.string ? 'shift-departing-finger' : 'shift-arriving-finger';
}

/**
 * The step between two places: its trade name from what the hand does, its distance, least time, slide and stretch.
 * Model: the hand travels by position; a finger that can reach its note from the finger before, in order and inside the stretched zone, goes first and
 * the hand follows on the sounding note (delayed shift), so nothing slides; a change of string or a rest silences the slide.
 * Example: violin, D string, E with 1 to A with 1 in one slur is a shift on the same finger of 5 semitones.
 */
export function handStep(player: Player, a: Place, b: Place, timing: StepTiming): HandStep {
  const mm = handTravel(player.instrument, a, b);
  const semitones = mm === 0 ? 0 : handSemitones(player.instrument, b) - handSemitones(player.instrument, a);
  const { span, zone, inOrder } = mm > 0 && a.string !== b.string ? APART : spanOf(player, a, b);
  const needs = leastTime(mm);
  const sameNoteSlide = mm === 0 && a.finger === b.finger && a.finger !== 0 && a.string === b.string && a.above !== b.above;
  const canFollow = a.string === b.string && inOrder && zone !== 'exceptional' && timing.rest === 0 && timing.sounds >= needs;
  const kind = sameNoteSlide ? 'chromatic-slide' : mm === 0 ? inPosition(a, b) : shiftKind(a, b, canFollow);
  const heldSpan = mm === 0 || kind === 'delayed-shift' ? span : 0;
  const held: Zone = heldSpan === 0 ? 'comfortable' : zone;
  const travelled = fingerTravel(kind, a, b, semitones);
  const slide = travelled !== 0 && timing.rest === 0 ? slideOf(player, travelled, mm, b, timing) : 0;
  return { kind, mm, semitones, needs, slide, span: heldSpan, zone: held };
}

function slideOf(player: Player, semitones: Semitones, mm: Millimetres, b: Place, timing: StepTiming): number {
  const hertz = hertzOf(player.instrument.openStrings[b.string - 1]! + b.above);
  return audibleSlide({ semitones, seconds: slideSeconds(mm), cover: timing.slurred ? 0 : 0.036, players: player.players, sliding: player.sliding, hertz }).index;
}

import type { Instrument } from '../instruments/instrument.ts';
import { USUAL_HAND, type HandProfile } from '../hand/reach.ts';
import type { Aim, OpenStrings } from './aims.ts';
import type { Refusal } from './layers.ts';
import type { LineNote } from './line.ts';
import { plainFingering, type PlainFingering } from './output.ts';
import type { Pin } from './pin.ts';
import { prepare } from './prepare.ts';
import { suggest } from './suggest.ts';
import { weightsFor } from './weights/weightsFor.ts';

export interface FingerLineOptions {
  pins?: ReadonlyMap<string, Pin>;
  aim?: Aim;
  openStrings?: OpenStrings;
  /** How many fingerings, from 1; 5 where absent. */
  best?: number;
  hand?: HandProfile;
  /** Players in the section; 1 where absent. All of them use the fingering. */
  players?: number;
}

export interface FingeredLine {
  /** Best first. */
  fingerings: PlainFingering[];
  refusals: Refusal[];
}

/**
 * The best fingerings of a line that differ musically, best first, and the notes that cannot be played. `tempo` in quarters a minute.
 * A hand other than the usual ranks down what lies beyond it, and hides nothing. Deterministic. Example: a G major scale on the violin begins with 0 on string 4.
 */
export function fingerLine(instrument: Instrument, line: readonly LineNote[], tempo: number, options: FingerLineOptions = {}): FingeredLine {
  const { pins = new Map<string, Pin>(), aim = 'usual', openStrings = 'free', best = 5, hand = USUAL_HAND, players = 1 } = options;
  const prepared = prepare({ instrument, line, tempo, pins, aim, openStrings, hand, players, sliding: players, weights: weightsFor(instrument.name) });
  return { fingerings: suggest(prepared, best).map((fingering) => plainFingering(instrument, fingering)), refusals: prepared.refusals };
}

import type { Instrument } from '../instruments/instrument.ts';
import type { Seconds } from '../music/seconds.ts';
import type { Stroke } from './strokes.ts';

export const DYNAMICS = ['pp', 'p', 'mp', 'mf', 'f', 'ff'] as const;
export type Dynamic = (typeof DYNAMICS)[number];

/** Seconds a whole bow lasts on a violin, by dynamic. */
export type BowTable = Record<Dynamic, Seconds>;

/**
 * Seconds after which a violin's bow is used up in sustained playing. Chosen, not measured, around the one published table (hoffmann: pp about 12 s,
 * mf 3, f 1, ff 0.5 for a singing full bow), which is short for held notes at f and ff.
 */
export const BOW_LIMIT: BowTable = { pp: 12, p: 9, mp: 7, mf: 5.5, f: 4, ff: 2.5 };

/** A sign at the moment of attack says little of what follows it: a forced attack sounds on at f, "fp" at p. */
const ATTACKS: Record<string, Dynamic> = { fp: 'p', sfp: 'p', sfpp: 'pp', pf: 'f' };

/**
 * The row of the bow table a printed dynamic belongs to. Anything softer than pp counts as pp, louder than ff as ff; none printed yet is `assumed`.
 * Example: "sfz" is "f", "fp" is "p".
 */
export function bowDynamic(printed: string | null, assumed: Dynamic): Dynamic {
  if (printed === null) return assumed;
  if (ATTACKS[printed]) return ATTACKS[printed];
  if ((DYNAMICS as readonly string[]).includes(printed)) return printed as Dynamic;
  if (/^p+$/.test(printed)) return 'pp';
  if (/^f+$/.test(printed)) return 'ff';
  return /^(s?f+z?|rfz?|fz)$/.test(printed) ? 'f' : assumed;
}

/** Seconds one bow lasts on this instrument at that dynamic. Example: a cello at p with the table above: 9 x 0.85 = 7.65 s. */
export function secondsPerBow(instrument: Instrument, dynamic: Dynamic, table: BowTable): Seconds {
  return table[dynamic] * instrument.bowShare;
}

/**
 * How much bow a stroke uses, 1 being all of it: each stretch of the stroke uses its seconds over the seconds a bow lasts at its dynamic. 0 for a tremolo.
 * Model: the bow is divided evenly, a hairpin counts from its next printed dynamic. Example: 6 s at p on a violin use 0.67.
 */
export function bowUsed(stroke: Stroke, instrument: Instrument, table: BowTable, assumed: Dynamic): number {
  if (stroke.tremolo) return 0;
  return stroke.pieces.reduce((sum, { event, seconds }) => sum + seconds / secondsPerBow(instrument, bowDynamic(event.head.dynamic, assumed), table), 0);
}

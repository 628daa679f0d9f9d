import type { InstrumentName } from '../music/part.ts';
import type { TermWeights } from './terms/all.ts';

export const AIMS = ['usual', 'smoothest', 'secure', 'one-colour', 'brightest', 'smallest-stretch'] as const;
export type Aim = (typeof AIMS)[number];

/** The weights a hand puts on its costs where no professionals' fingerings are known: chosen, not measured. */
export const HAND: TermWeights = {
  handTravel: 0.45, haste: 0.6, slide: 0.3, stretch: 0.4, extension: 0.3, crossing: 0.2, hop: 0.5, outOfOrder: 1.5, openString: 0.15, weakFinger: 0.1, height: 0.35, fingerSlide: 0.9, thumbPosition: 0.6,
};

/** What the page adds to them where the hand is all there is to go by: chosen, not measured. */
const PAGE: TermWeights = { bareShift: 0.2, sameFingerAgain: 0.6, graceFinger: 2, slurredCrossing: 0.05 };

/** What each aim adds to the usual fingering: chosen, not measured. */
const WISHES: Record<Aim, TermWeights> = {
  usual: { bareShift: 0.1, graceFinger: 1 },
  smoothest: { slide: 3, handTravel: 0.25, stretch: 0.15, extension: 0.05, crossing: 0.35, outOfOrder: 1.5, openString: 0.4, hop: 0.3, fingerSlide: 0.3, haste: 0.4, bareShift: 0.2, sameFingerAgain: 1, graceFinger: 2, slurredCrossing: 0.1 },
  secure: { handTravel: 0.4, haste: 1, sameFingerAgain: 1, graceFinger: 2, stretch: 1, extension: 0.5, height: 0.8, outOfOrder: 1 },
  'one-colour': { crossing: 1.2, slurredCrossing: 0.4, openString: 0.6, outOfOrder: 1 },
  brightest: { openString: -0.6, height: 1 },
  'smallest-stretch': { stretch: 3, extension: 1.2, outOfOrder: 1 },
};

/** What the section has settled about open strings. */
export const OPEN_STRINGS = ['free', 'avoided', 'wanted'] as const;
export type OpenStrings = (typeof OPEN_STRINGS)[number];

/** What the setting adds to an open note: chosen, not measured. */
const OPEN: Record<OpenStrings, number> = { free: 0, avoided: 3, wanted: -0.5 };

/** What the setting adds to the log likelihood of an open note: chosen, not measured. */
export const OPEN_LIKELIHOOD: Record<OpenStrings, number> = { free: 0, avoided: -6, wanted: 1 };

export interface Balance {
  /** Weight of what professionals do, in expected differences from them; 0 where none is known. */
  trust: number;
  terms: TermWeights;
  /** Weight of steps that professionals hardly ever make, where they alone are the judges; 0 elsewhere. */
  rare: number;
  /** Weight of the same figure fingered otherwise elsewhere; 0 where no professionals are known. */
  sequence: number;
  /** The hand's costs as a first opinion that the fitted weights correct, where the data are few; 0 where they are many. */
  prior: number;
  /** Whether a line is judged by where professionals move the hand, which many of them must tell: of the cello one edition is known. */
  byMoves: boolean;
}

/** How far each aim follows what professionals do: all the way, as far as a wish allows, or hardly where the line alone counts; chosen, not measured. */
const TRUST: Record<Aim, number> = { usual: 1, smoothest: 0.1, secure: 0.35, 'one-colour': 0.35, brightest: 0.35, 'smallest-stretch': 0.35 };

/** Chosen on the training works. */
const SEQUENCE = 0.3;

/** Chosen on the studies, each measured with weights that have not seen it. */
const CELLO_PRIOR = 1;

/** How an aim weighs what professionals do against the costs of the hand. `fitted`: their fingerings are known for this instrument. */
export function balanceOf(aim: Aim, instrument: InstrumentName, fitted: boolean, openStrings: OpenStrings = 'free'): Balance {
  const asked = WISHES[aim];
  const wishes = openStrings === 'free' ? asked : { ...asked, openString: (asked.openString ?? 0) + OPEN[openStrings] };
  if (fitted) return { trust: TRUST[aim], terms: wishes, rare: TRUST[aim] === 1 ? 1 : 0, sequence: SEQUENCE, prior: instrument === 'cello' ? CELLO_PRIOR : 0, byMoves: instrument !== 'cello' };
  const terms: TermWeights = { ...HAND, ...PAGE };
  for (const key of Object.keys(wishes) as (keyof TermWeights)[]) terms[key] = (terms[key] ?? 0) + wishes[key]!;
  return { trust: 0, terms, rare: 0, sequence: 0, prior: 0, byMoves: false };
}

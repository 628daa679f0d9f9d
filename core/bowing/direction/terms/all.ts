import { accent } from './accent.ts';
import { chord } from './chord.ts';
import { downbeat } from './downbeat.ts';
import { ending } from './ending.ts';
import { hook } from './hook.ts';
import { longBow } from './longBow.ts';
import { middle } from './middle.ts';
import { offBeat } from './offBeat.ts';
import { overRest } from './overRest.ts';
import { phraseStart } from './phraseStart.ts';
import { pickUp } from './pickUp.ts';
import { retake } from './retake.ts';
import { swell } from './swell.ts';
import type { BowTerm } from './term.ts';

/** Every cost of a bow's direction, in the order an explanation lists them. */
export const BOW_TERMS = { downbeat, middle, offBeat, phraseStart, pickUp, accent, chord, swell, longBow, ending, retake, hook, overRest } as const satisfies Record<string, BowTerm>;

export type BowTermKey = keyof typeof BOW_TERMS;
export type BowTermWeights = Record<BowTermKey, number>;

import type { BowTermWeights } from './terms/all.ts';

/**
 * Fitted by tests/bench/bowing/fit.ts on 20 performances and the printed signs of 13 works, rounded; the data are not part of this project.
 * Chosen, not measured: offBeat, pickUp and ending (nearly nothing in the fit, kept so that they decide what nothing else does) and hook (the performances
 * do not tell a hooked pair from a slur).
 */
export const BOW_WEIGHTS: BowTermWeights = { downbeat: 0.99, middle: 0.61, offBeat: 0.1, phraseStart: 0.14, pickUp: 0.1, accent: 1.96, chord: 1.47, swell: 0.55, longBow: 0.29, ending: 0.1, retake: 2.72, hook: 2.5, overRest: 0.14 };

/** Cost of splitting a slur, and of every whole bow that a slur needs beyond the one it has: chosen, not measured. */
export const SPLIT = 5;
export const RUNS_OUT = 4;

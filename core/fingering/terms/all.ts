import { bareShift } from './bareShift.ts';
import { crossing } from './crossing.ts';
import { extension } from './extension.ts';
import { fingerSlide } from './fingerSlide.ts';
import { graceFinger } from './graceFinger.ts';
import { handTravel } from './handTravel.ts';
import { haste } from './haste.ts';
import { height } from './height.ts';
import { hop } from './hop.ts';
import { openString } from './openString.ts';
import { outOfOrder } from './outOfOrder.ts';
import { sameFingerAgain } from './sameFingerAgain.ts';
import { slide } from './slide.ts';
import { slurredCrossing } from './slurredCrossing.ts';
import { stretch } from './stretch.ts';
import type { Term } from './term.ts';
import { thumbPosition } from './thumbPosition.ts';
import { weakFinger } from './weakFinger.ts';

/** Every cost of the hand, in the order an explanation lists them. */
export const TERMS = { handTravel, haste, slide, bareShift, sameFingerAgain, graceFinger, stretch, extension, fingerSlide, crossing, slurredCrossing, hop, outOfOrder, openString, weakFinger, height, thumbPosition } as const satisfies Record<string, Term>;

export type TermKey = keyof typeof TERMS;
export type TermWeights = Partial<Record<TermKey, number>>;

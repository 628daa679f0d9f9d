import { type Dynamic, bowDynamic } from '../bowing/bowLength.ts';
import { BOW_CHANGE, dipSeconds } from '../bowing/dip.ts';
import type { Seconds } from '../music/seconds.ts';
import type { LevelCorner } from './sound.ts';
import type { Tone } from './tones.ts';

/** Level of each dynamic, decibels below ff: 3 a step, as far as bow speed alone carries (5 to 40 cm/s, computed); chosen, not measured. */
const LEVELS: Record<Dynamic, number> = { pp: -15, p: -12, mp: -9, mf: -6, f: -3, ff: 0 };
/** How long a new dynamic takes to be there: chosen, not measured. */
const SETTLES: Seconds = 0.06;
/** Corners of a dip on each side of its middle. */
const CORNERS = 8;

/** Decibels that a change of bow takes at `off` seconds from its middle: a raised cosine. Example: 6.8 in the middle, 0 from 33 ms away. */
function dipAt(off: Seconds): number {
  const share = Math.abs(off) / (dipSeconds(BOW_CHANGE) / 2);
  return share >= 1 ? 0 : (BOW_CHANGE.depth / 2) * (1 + Math.cos(Math.PI * share));
}

/**
 * The loudness of one player over time: the level of the dynamic in force, less a short dip at each change of bow (medians of recorded violin, measured).
 * `changes` in order of time. Between corners it is straight in decibels. Invariant: corners in order of time.
 * Example: mf with one change at 2 s is -6 dB, -12.8 at 2 s, -6 again 33 ms later.
 */
export function levelOf(tones: readonly Tone[], changes: readonly Seconds[], seconds: Seconds): LevelCorner[] {
  const steps: LevelCorner[] = [];
  for (const { from, dynamic } of tones) {
    const decibels = LEVELS[bowDynamic(dynamic, 'mf')];
    if (steps.at(-1)?.decibels !== decibels) steps.push({ at: from, decibels });
  }
  const dynamicAt = (at: Seconds): number => {
    const now = steps.findLastIndex((step) => step.at <= at);
    if (now <= 0) return steps[0]?.decibels ?? 0;
    const [before, here] = [steps[now - 1]!, steps[now]!];
    return before.decibels + (here.decibels - before.decibels) * Math.min(1, (at - here.at) / SETTLES);
  };
  const half = dipSeconds(BOW_CHANGE) / 2;
  const dips = changes.flatMap((change) => Array.from({ length: 2 * CORNERS + 1 }, (_, i) => change + (half * (i - CORNERS)) / CORNERS));
  const times = [0, ...steps.flatMap(({ at }) => [at, at + SETTLES]), ...dips, seconds].filter((at) => at >= 0 && at <= seconds).sort((a, b) => a - b);
  let near = 0;
  return times.map((at) => {
    while (near < changes.length && changes[near]! < at - half) near += 1;
    let dip = 0;
    for (let i = near; i < changes.length && changes[i]! <= at + half; i += 1) dip = Math.max(dip, dipAt(at - changes[i]!));
    return { at, decibels: dynamicAt(at) - dip };
  });
}

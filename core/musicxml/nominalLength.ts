import type { Measure } from '../music/part.ts';
import { type ExactTime, plus } from '../music/time.ts';
import { ratio } from './ratio.ts';

/** Quarters a time signature asks for; 0 where it cannot be read. Example: `{ beats: "3+2", beatType: "8" }` gives "5/2". */
export function nominalLength(time: Measure['time']): ExactTime {
  if (!time) return 0;
  return time.beats.split('+').reduce<ExactTime>((sum, beats) => {
    const [over, under] = beats.split('/').map((text) => Number(text.trim()));
    const beatType = under ?? Number(time.beatType);
    return Number.isInteger(over) && Number.isInteger(beatType) && beatType > 0 ? plus(sum, ratio(4 * (over ?? 0), beatType)) : sum;
  }, 0);
}

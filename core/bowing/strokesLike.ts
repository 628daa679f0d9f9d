import { firstIndex } from '../music/firstIndex.ts';
import type { Voice } from './events.ts';
import { type BowSigns, type Stroke, strokesWithin } from './strokes.ts';

/** Index of the last bow that begins at or before the event; 0 where none does. */
function lastBeginningBy(strokes: readonly Stroke[], event: number): number {
  return Math.max(0, firstIndex(strokes.length, (at) => strokes[at]!.begins.event > event) - 1);
}

/** Several bows may share an event that a change cuts: the first of them. */
function firstReaching(strokes: readonly Stroke[], last: number, event: number): number {
  let first = last;
  while (first > 0 && strokes[first]!.begins.event === event && strokes[first]!.begins.inside) first--;
  return first;
}

/**
 * The bows for players whose signs differ from those behind `base` on the events `differing` only. Equal to `strokesOf`, but keeps the bows of `base`
 * that nothing touches: a sign reaches no further than the bows before and after its own.
 */
export function strokesLike(base: readonly Stroke[], voice: Voice, signsOn: (note: string) => BowSigns, differing: readonly number[]): Stroke[] {
  const touched = new Uint8Array(base.length);
  for (const event of differing) {
    const own = lastBeginningBy(base, event);
    for (let index = Math.max(0, firstReaching(base, own, event) - 1); index <= Math.min(base.length - 1, own + 1); index++) touched[index] = 1;
  }
  // Bows that meet inside an event are worked out together.
  for (let index = base.length - 1; index > 0; index--) if (touched[index] && base[index]!.begins.inside) touched[index - 1] = 1;
  for (let index = 1; index < base.length; index++) if (touched[index - 1] && base[index]!.begins.inside) touched[index] = 1;
  const strokes: Stroke[] = [];
  for (let index = 0; index < base.length; ) {
    if (!touched[index]) {
      strokes.push(base[index++]!);
      continue;
    }
    let next = index;
    while (next < base.length && touched[next]) next++;
    const end = base[next]?.begins.event ?? voice.length;
    for (const stroke of strokesWithin(voice, signsOn, base[index]!.begins.event, end, base[index - 1]?.end ?? -Infinity)) strokes.push(stroke);
    index = next;
  }
  return strokes;
}

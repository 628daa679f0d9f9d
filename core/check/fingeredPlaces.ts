import type { CheckContext } from './context.ts';

const known = new WeakMap<CheckContext, readonly number[][]>();

/** Places in each voice of the events on whose first note anybody sees a finger, in order. Worked out once for a part as marked. */
export function fingeredPlaces(part: CheckContext): readonly number[][] {
  const before = known.get(part);
  if (before) return before;
  const own = new Set(part.groups.flatMap((group) => [...group.own]));
  const first = part.groups[0]!;
  const places = part.voices.map((voice) => voice.flatMap(({ head }, at) => (first.marksOn(head.id).finger !== undefined || own.has(head.id) ? [at] : [])));
  known.set(part, places);
  return places;
}

/** First and last measure (ordinals) of a system. */
export interface SystemRange {
  first: number;
  last: number;
}

/**
 * The measures of each of `count` systems. `systemOf` says in which system, from 1, a measure begins, and is dear: it is asked near the place
 * where the next system most likely begins. Measures inside a counted rest (`spans`) are in no system and never asked for.
 */
export function systemRanges(measures: readonly number[], spans: ReadonlyMap<number, number>, count: number, systemOf: (ordinal: number) => number): SystemRange[] {
  let counted = 0;
  const standing = measures.filter((ordinal) => {
    if (ordinal <= counted) return false;
    counted = ordinal + (spans.get(ordinal) ?? 1) - 1;
    return true;
  });
  const begins = [0];
  let length = 4;
  for (let system = 1; system < count; system += 1) {
    const from = begins.at(-1)!;
    let at = Math.min(standing.length - 1, from + Math.max(1, length));
    while (at > from + 1 && systemOf(standing[at - 1]!) > system) at -= 1;
    while (at < standing.length && systemOf(standing[at]!) <= system) at += 1;
    if (at >= standing.length) break;
    begins.push(at);
    length = at - from;
  }
  return begins.flatMap((begin, i) => {
    const next = begins[i + 1];
    const last = next === undefined ? measures.at(-1) : standing[next]! - 1;
    return standing[begin] === undefined || last === undefined ? [] : [{ first: standing[begin]!, last }];
  });
}

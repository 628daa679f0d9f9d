import type { TrueMoment } from './readTruth.ts';

type Pair = [before: number, after: number];

/** Moments that are made of the same notes (or a silence as long, after such a one), in order. */
function truePairs(before: readonly TrueMoment[], after: readonly TrueMoment[]): Pair[] {
  const at = new Map(after.flatMap((moment, i) => moment.notes.flatMap(({ origin }): [number, number][] => (origin === null ? [] : [[origin, i]]))));
  const pairs: Pair[] = [];
  before.forEach((moment, i) => {
    const last = pairs.at(-1) ?? [-1, -1];
    const partner = moment.notes.length ? at.get(moment.notes[0]!.index) : last[0] === i - 1 ? last[1] + 1 : undefined;
    const there = partner === undefined ? undefined : after[partner];
    if (!there || there.says !== moment.says || partner! <= last[1]) return;
    const origins = new Set(there.notes.map(({ origin }) => origin));
    if (moment.notes.every(({ index }) => origins.has(index))) pairs.push([i, partner!]);
  });
  return pairs;
}

/** How far from a stretch that was put in or taken out the music could as well be read one stretch further: all that has less than two differences from it. */
function unsure(before: readonly TrueMoment[], after: readonly TrueMoment[], from: Pair, step: 1 | -1, longer: number): number {
  let [net, far] = [0, 0];
  for (let t = 0; ; t += 1) {
    const [o, n] = [from[0] + step * t, from[1] + step * t];
    if (!before[o] || !after[n]) return far;
    const [other, same] = longer > 0 ? [before[o - step * longer]?.says, after[n]!.says] : [after[n + step * longer]?.says, before[o]!.says];
    net += (other === same ? 0 : 1) - (before[o]!.says === after[n]!.says ? 0 : 1);
    if (net <= 1) far = t + 1;
  }
}

/**
 * The notes whose mark must stay, by their count in the older text: all that begins with them is unchanged and so are the moments before and after, as far away
 * as they were; and they lie outside the repetition of a stretch that was put in or taken out beside them, where nobody could tell which one it was.
 */
export function mustStay(before: readonly TrueMoment[], after: readonly TrueMoment[]): Set<number> {
  const pairs = truePairs(before, after);
  const partner = new Map(pairs);
  const sure = new Uint8Array(before.length).fill(1);
  const ends: Pair[] = [[-1, -1], ...pairs, [before.length, after.length]];
  for (let k = 1; k < ends.length; k += 1) {
    const [left, right] = [ends[k - 1]!, ends[k]!];
    const longer = right[0] - left[0] - (right[1] - left[1]);
    if (longer === 0) continue;
    for (let t = unsure(before, after, right, 1, longer) - 1; t >= 0; t -= 1) sure[right[0] + t] = 0;
    for (let t = unsure(before, after, left, -1, longer) - 1; t >= 0; t -= 1) sure[left[0] - t] = 0;
  }
  const stay = new Set<number>();
  before.forEach((moment, i) => {
    const now = partner.get(i);
    if (now === undefined || !sure[i]) return;
    const isHere = [-1, 1].every((step) => {
      const [old, there] = [before[i + step], after[now + step]];
      if (!old || !there) return !old && !there;
      return partner.get(i + step) === now + step && Math.abs(old.at - moment.at - (there.at - after[now]!.at)) < 1e-6;
    });
    if (isHere) for (const { index } of moment.notes) stay.add(index);
  });
  return stay;
}

import type { Apart } from './editionsApart.ts';
import type { HeldNote, Moment } from './musicRow.ts';

export type PairUnisons = (held: HeldNote, here: Moment, there: Moment) => { partner: HeldNote | undefined; isClear: boolean };

const alike = (held: HeldNote, { notes }: Moment): HeldNote[] => notes.filter(({ says }) => says === held.says);

/** Which voice of the newer edition each voice of the older one is, told by the notes that stand alone; null where they disagree. */
function voicesOf({ before, after, partner, certain, isSame }: Apart): Map<string, string | null> {
  const named = new Map<string, string | null>();
  const taken = new Map<string, string>();
  before.forEach((here, at) => {
    if (!certain[at] || !isSame(at)) return;
    for (const held of here.notes) {
      const [one, ...more] = alike(held, after[partner[at]!]!);
      if (!one || more.length || alike(held, here).length > 1) continue;
      const [old, now] = [held.head.voice, one.head.voice];
      const agrees = (named.get(old) ?? now) === now && (taken.get(now) ?? old) === old && named.get(old) !== null;
      named.set(old, agrees ? now : null);
      taken.set(now, old);
    }
  });
  return named;
}

/**
 * Finds a note among those that begin with it in the newer edition. Notes that stand twice (one pitch and length in two voices) go by their voice, where
 * the notes that stand alone agree which voice is which, and by their order in one voice; not clear otherwise. A voice that never has a note of its own
 * is the one that is left. Example: voices 1 and 2 that became 5 and 6 throughout are clear.
 */
export function pairUnisons(apart: Apart): PairUnisons {
  let voices: Map<string, string | null> | undefined;
  return (held, here, there) => {
    const [ours, theirs] = [alike(held, here), alike(held, there)];
    if (ours.length === 1) return { partner: theirs[0], isClear: theirs.length === 1 };
    voices ??= voicesOf(apart);
    const { voice } = held.head;
    const known = voices.get(voice);
    const others = new Set(voices.values());
    const isOurs = (other: string) => (known === undefined ? !others.has(other) : other === known);
    const [mine, fits] = [ours.filter(({ head }) => head.voice === voice), theirs.filter(({ head }) => isOurs(head.voice))];
    const isClear = known !== null && mine.length === fits.length;
    return { partner: isClear ? fits[mine.indexOf(held)] : theirs[ours.indexOf(held)], isClear };
  };
}

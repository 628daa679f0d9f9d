import { slotOf } from '../music/mark.ts';
import { canonical } from './canonical.ts';
import type { InkMoved } from './ink.ts';
import { inkAt, type InkPlace } from './revisions.ts';
import type { AgreementState, PartFacts } from './state.ts';

/** What is inked in again, and what stands no longer. */
export interface Restoring {
  back: InkMoved[];
  aside: InkMoved[];
}

function bySlot(places: readonly InkPlace[]): Map<string, InkPlace[]> {
  const found = new Map<string, InkPlace[]>();
  for (const place of places) {
    const { note, value } = place.one.mark;
    const key = `${slotOf(value)} ${note}`;
    found.set(key, [...(found.get(key) ?? []), place]);
  }
  return found;
}

const same = (a: InkPlace | undefined, b: InkPlace | undefined): boolean =>
  a !== undefined && b !== undefined && canonical([a.one.mark.value, a.one.seats]) === canonical([b.one.mark.value, b.one.seats]);

/**
 * What has to be inked in again and set aside so that the marks in force are those that stood after `seq` rows (0 and up; from the present row on, nothing changes).
 * In one slot of one note the later mark wins, so ink from the first difference on is laid anew in its old order; equal ink is left as it is.
 * Ink on notes the part has no longer stays where it is, neither taken back nor inked in.
 * Example: after a second fingering of a note, `restoring(state, seqOfTheFirst, facts)` is `{ back: [first], aside: [second] }`.
 */
export function restoring(state: AgreementState, seq: number, facts: PartFacts): Restoring {
  const here = ({ one }: InkPlace): boolean => facts.notes.has(one.mark.note);
  const then = bySlot(inkAt(state, seq).filter(here));
  const now = bySlot(inkAt(state, state.seq).filter(here));
  const moved = ({ ink, one }: InkPlace): InkMoved => ({ ink, measure: facts.notes.get(one.mark.note)! });
  const found: Restoring = { back: [], aside: [] };
  for (const key of new Set([...then.keys(), ...now.keys()])) {
    const [stood, stands] = [then.get(key) ?? [], now.get(key) ?? []];
    let alike = 0;
    while (same(stood[alike], stands[alike])) alike += 1;
    found.back.push(...stood.slice(alike).map(moved));
    found.aside.push(...stands.slice(alike).map(moved));
  }
  return { back: found.back.sort((a, b) => a.ink - b.ink), aside: found.aside.sort((a, b) => a.ink - b.ink) };
}

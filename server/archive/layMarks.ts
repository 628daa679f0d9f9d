import { createHash } from 'node:crypto';
import { refusalText } from '../../core/agreement/refusal.ts';
import { slipsOf } from '../../core/archive/slips.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Authority } from '../operations/authority.ts';
import type { Answer } from '../operations/rule.ts';
import type { Asker } from '../store/partLog.ts';

/** Marks to be laid on a part as slips, and inked in at once where wished. */
export interface Laying {
  part: string;
  notes: ReadonlyMap<string, number>;
  marks: readonly Mark[];
  why: string;
  ink: boolean;
  /** The same asking gives the same ids, so that asking again lays nothing twice. */
  asking: string;
  asker: Asker;
}

/** A uuid that says which thing of an asking it names. */
function named(...what: (string | number)[]): string {
  const hex = createHash('sha256').update(what.join(' ')).digest('hex');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

function wordsOf(answer: Answer | null): string | null {
  if (answer?.ok) return null;
  if (answer && 'fault' in answer) throw answer.fault;
  return answer && 'refusal' in answer ? refusalText(answer.refusal) : 'You are not signed in any more. Open a sign-in link and do it again.';
}

/** Lays the marks, slip by slip; stops at the first that is refused and says why. */
export async function layMarks(authority: Authority, { part, notes, marks, why, ink, asking, asker }: Laying): Promise<{ slips: number; inked: number; refusal: string | null }> {
  let [slips, inked] = [0, 0];
  for (const slip of slipsOf(marks, notes)) {
    const id = named(asking, part, slip.from);
    const laid = await authority.submit(part, { request: { operation: named(asking, part, slip.from, 'lay'), name: 'bringIn', input: { id, ...slip, seats: 'all', why } }, asker });
    const refusal = wordsOf(laid);
    if (refusal !== null) return { slips, inked, refusal };
    slips += 1;
    if (!ink) continue;
    const inking = wordsOf(await authority.submit(part, { request: { operation: named(asking, part, slip.from, 'ink'), name: 'adopt', input: { proposal: id, revision: 1, why } }, asker }));
    if (inking !== null) return { slips, inked, refusal: inking };
    inked += 1;
  }
  return { slips, inked, refusal: null };
}

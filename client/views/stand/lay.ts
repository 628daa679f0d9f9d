import { newId } from '../../agreement/newId.ts';
import type { OperationInput, OperationName } from '../../../core/agreement/registry.ts';
import { refusalText } from '../../../core/agreement/refusal.ts';
import type { Seats } from '../../../core/music/seat.ts';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';
import { rangeOf } from './standing.ts';

/** Writes an operation; true when it was not refused here and now. A refusal becomes the ledge's sentence. */
export function submit<Name extends OperationName>(desk: Desk, name: Name, input: OperationInput<Name>): boolean {
  const operation = desk.session.submit(name, input);
  const refusal = desk.session.getSnapshot().refusals.find((one) => one.operation === operation)?.refusal;
  if (refusal) desk.say(refusalText(refusal, words.refusals));
  return !refusal;
}

/** Lays the pencilled draft under the part as a slip; for the principal's ink, decides it at once. */
export function lay(desk: Desk, why: string, seats: Seats, ink: boolean): boolean {
  const { pencil, facts, revising } = desk;
  const range = rangeOf(pencil.draft, facts);
  if (!range) return false;
  const content = { ...range, seats, why, marks: [...pencil.draft] };
  const id = revising?.id ?? newId();
  const laid = revising ? submit(desk, 'revise', { proposal: id, ...content }) : submit(desk, 'propose', { id, ...content });
  if (!laid) return false;
  const inked = ink && submit(desk, 'adopt', { proposal: id, revision: revising ? revising.revision + 1 : 1, why: '' });
  const n = pencil.draft.length;
  desk.write({ type: 'laid' });
  desk.setRevising(null);
  // Without a line nobody sees it yet: then the ledge says what waits.
  if (desk.snapshot.status === 'live' && (!ink || inked)) desk.say(inked ? words.stand.inked(n) : words.stand.laid(n));
  return true;
}

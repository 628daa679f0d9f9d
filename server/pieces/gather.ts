import { inForce } from '../../core/agreement/inForce.ts';
import { groundOf } from './ground.ts';
import { seatsOf } from '../../core/agreement/seating.ts';
import type { WorkView } from '../../core/agreement/wire/http.ts';
import { packed } from '../jobs/checkPiece.ts';
import type { Authority } from '../operations/authority.ts';
import type { Store } from '../store/store.ts';

/** A part as it stood when it was taken up. */
export interface Gathered {
  id: string;
  name: string;
  /** Where its log stood. */
  head: number;
  /** What it is read by besides its log. */
  ground: string;
  packed: Uint8Array;
}

/** The parts of a work as they stand, ready for a worker: taken up one after another, so that others are heard in between. */
export async function gather({ store, authority }: { store: Store; authority: Authority }, work: WorkView, signal: AbortSignal): Promise<Gathered[]> {
  const gathered: Gathered[] = [];
  for (const { id } of work.parts) {
    signal.throwIfAborted();
    const [part, current] = [await store.library.part(id), await authority.current(id)];
    if (!part || !current) continue;
    const section = await store.sections.ofPart(id);
    const seats = seatsOf(section);
    const { name } = part.content;
    const order = { id, name, part: part.content, seats, marks: inForce(current.state, seats), settings: section?.settings ?? {}, mutes: current.state.mutes };
    gathered.push({ id, name, head: current.state.seq, ground: groundOf(part.revision, section), packed: packed(order) });
  }
  return gathered;
}

import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { connect, type Connection } from '../../../client/agreement/connection.ts';
import type { Hindrance } from '../../../client/agreement/hindrance.ts';
import { openPart } from '../../../client/agreement/partSession.ts';
import { memoryQueue, type QueueStorage } from '../../../client/agreement/queue.ts';
import type { PartSession } from '../../../client/agreement/session.ts';
import type { Actor } from '../../../core/agreement/people.ts';
import { emptyState, type AgreementState } from '../../../core/agreement/state.ts';
import { FACTS, id } from '../../core/agreement/section.ts';
import { Authority } from './authority.ts';
import { Network, PART } from './network.ts';
import { VirtualClock } from './virtualClock.ts';

export const TIMING = { answer: 2000, pause: 100, longest: 1000, patience: 1500, written: 2000 };

export interface Stand {
  me: Actor;
  storage: QueueStorage;
  connection: Connection;
  session: PartSession;
}

/** A section whose players each have the part open, all in memory. */
export class Rehearsal {
  clock = new VirtualClock();
  authority = new Authority(() => this.clock.now());
  network = new Network(this.clock, this.authority);
  #ids = 0;

  open(me: Actor, { storage = memoryQueue(), state = emptyState(), protocol = PROTOCOL, askWhy }: { storage?: QueueStorage; state?: AgreementState; protocol?: number; askWhy?: () => Promise<Hindrance> } = {}): Stand {
    if (!this.authority.people.has(me.id)) this.authority.people.set(me.id, me);
    const connection = connect({ openWire: this.network.wireOf(me.id), clock: this.clock, timing: TIMING, protocol, ...(askWhy ? { askWhy } : {}) });
    const newId = () => id(500_000 + (this.#ids += 1));
    const session = openPart({ part: PART, connection, storage, clock: this.clock, timing: TIMING, newId, me, facts: FACTS, state });
    return { me, storage, connection, session };
  }

  /** The page is closed and opened again; the server gives it `state`. */
  reload({ me, storage, connection, session }: Stand, state: AgreementState = this.authority.state): Stand {
    session.close();
    connection.close();
    return this.open(me, { storage, state: structuredClone(state) });
  }
}

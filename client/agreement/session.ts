import type { LogEntry } from '../../core/agreement/event.ts';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import type { OperationInput, OperationName } from '../../core/agreement/registry.ts';
import type { AgreementState, PartFacts } from '../../core/agreement/state.ts';
import type { Clock, Timing } from './clock.ts';
import type { Connection, ConnectionStatus } from './connection.ts';
import type { Hindrance } from './hindrance.ts';
import type { Present } from './presence.ts';
import type { Queued, QueueStorage } from './queue.ts';

/** An operation that came back refused, or was refused here before it was sent. */
export interface RefusedLine {
  operation: string;
  name: string;
  input: unknown;
  refusal: Refusal;
}

export type Outcome = { ok: true; seq: number } | { ok: false; refusal: Refusal };

/** All a screen shows of one part's agreement; the same object until something changes. */
export interface PartSnapshot {
  /** With everything that still waits, as it will be. */
  state: AgreementState;
  /** As the server's log has it. */
  confirmed: AgreementState;
  /** Written here, not yet in the log; in order. */
  waiting: readonly Queued[];
  /** Ids among `waiting` that would be refused as things stand, so `state` is without them. */
  doubtful: ReadonlyMap<string, Refusal>;
  /** Newest last, until `dismiss`. */
  refusals: readonly RefusedLine[];
  status: ConnectionStatus;
  /** What keeps lines from the log just now, if anything does. */
  hindrance: Hindrance | null;
  /** All that something had kept is in the log since a moment ago. */
  arrived: boolean;
  caughtUp: boolean;
  people: readonly Present[];
  /** The part's notes, section or seating changed: fetch it again and call `renew`. */
  renewed: boolean;
  /** Why the part cannot be followed, if so. */
  trouble: Refusal | null;
  /** False when this browser cannot keep unsent lines over a reload. */
  kept: boolean;
}

/** What the server tells of a part besides its log: the confirmed state to start from, the notes and seats, and who I am in its section. */
export interface AgreementView {
  state: AgreementState;
  facts: PartFacts;
  me: Actor;
}

export interface PartSession {
  getSnapshot(): PartSnapshot;
  subscribe(changed: () => void): () => void;
  /** Write an operation: it shows at once and is sent when it can be. Gives its id. */
  submit<Name extends OperationName>(name: Name, input: OperationInput<Name>): string;
  /** The server's word on an operation of this session. */
  settled(operation: string): Promise<Outcome>;
  dismiss(operation: string): void;
  look(measure: number | null): void;
  renew(view: AgreementView): void;
  close(): void;
}

export interface PartSessionOptions extends AgreementView {
  part: string;
  connection: Connection;
  storage: QueueStorage;
  clock: Clock;
  newId(): string;
  timing?: Timing;
  /** Rows of the log as they are confirmed, in order. */
  onRows?(rows: readonly LogEntry[]): void;
}

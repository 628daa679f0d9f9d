import type { LogEntry } from '../../../core/agreement/event.ts';
import { evolve } from '../../../core/agreement/evolve.ts';
import type { Actor } from '../../../core/agreement/people.ts';
import type { Decision } from '../../../core/agreement/refusal.ts';
import type { OperationInput, OperationName } from '../../../core/agreement/registry.ts';
import { run } from '../../../core/agreement/run.ts';
import { emptyState, type AgreementState, type PartFacts } from '../../../core/agreement/state.ts';
import { seatsFor } from '../../../core/music/seat.ts';

/** An invented section of five on a part of four measures, three notes each: "m2n0" is the first note of measure 2. */
export const FACTS: PartFacts = {
  measures: 4,
  notes: new Map([1, 2, 3, 4].flatMap((measure) => [0, 1, 2].map((index) => [`m${measure}n${index}`, measure] as const))),
  seats: seatsFor(5),
};

export const PRINCIPAL: Actor = { id: 'runa', name: 'Runa', roles: ['principal', 'player'], seat: '1o' };
export const PARTNER: Actor = { id: 'piet', name: 'Piet', roles: ['player'], seat: '1i' };
export const PLAYER: Actor = { id: 'wanda', name: 'Wanda', roles: ['player'], seat: '2o' };
export const LIBRARIAN: Actor = { id: 'osk', name: 'Osk', roles: ['librarian'], seat: null };
export const STRANGER: Actor = { id: 'nemo', name: 'Nemo', roles: [], seat: null };
export const EVERYBODY = [PRINCIPAL, PARTNER, PLAYER, LIBRARIAN, STRANGER];

/** A uuid that says which thing of a test it names. */
export function id(n: number): string {
  return `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;
}

const SPOKEN = Date.parse('2026-11-25T10:00:00Z');

/** A log that grows line by line, as a section talks. */
export class Conversation {
  state: AgreementState = emptyState();
  log: LogEntry[] = [];
  facts: PartFacts;

  constructor(facts: PartFacts = FACTS) {
    this.facts = facts;
  }

  /** What comes of an operation; it is in the log if it was let through. */
  hear(by: Actor, name: string, input: unknown): Decision<LogEntry['events'][number]> {
    const seq = this.state.seq + 1;
    const decision = run(this.state, { operation: id(900_000 + seq), name, input }, by, this.facts);
    if (!decision.ok) return decision;
    const entry: LogEntry = { seq, operation: id(900_000 + seq), name, input, events: decision.events, by: by.id, byName: by.name, at: new Date(SPOKEN + seq * 1000).toISOString() };
    this.state = evolve(this.state, entry);
    this.log.push(entry);
    return decision;
  }

  /** "written", or the code of the refusal. */
  say<Name extends OperationName>(by: Actor, name: Name, input: OperationInput<Name>): string {
    const decision = this.hear(by, name, input);
    return decision.ok ? 'written' : decision.refusal.code;
  }
}

type Propose = OperationInput<'propose'>;

/** A slip with one finger on the first note of its first measure, unless said otherwise. */
export function slip(n: number, over: Partial<Propose> = {}): Propose {
  const from = over.from ?? 1;
  return { id: id(n), from, to: from, seats: 'all', why: 'One hand, one colour', marks: [{ note: `m${from}n0`, value: { kind: 'finger', finger: 2 } }], ...over };
}

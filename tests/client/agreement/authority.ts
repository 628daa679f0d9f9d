import type { LogEntry } from '../../../core/agreement/event.ts';
import { evolve } from '../../../core/agreement/evolve.ts';
import type { Actor } from '../../../core/agreement/people.ts';
import { refused, type Refusal } from '../../../core/agreement/refusal.ts';
import { run, type Request } from '../../../core/agreement/run.ts';
import { emptyState, type AgreementState } from '../../../core/agreement/state.ts';
import { PROTOCOL, type FollowAnswer, type HelloAnswer, type SubmitAnswer } from '../../../core/agreement/wire/socket.ts';
import { FACTS } from '../../core/agreement/section.ts';

/** The one who keeps the log, in memory: answers an operation id once and for all, reads roles when it commits. */
export class Authority {
  log: LogEntry[] = [];
  state: AgreementState = emptyState();
  people = new Map<string, Actor>();
  protocol = PROTOCOL;
  /** Answers to give instead of deciding, in order. */
  moods: SubmitAnswer[] = [];
  /** Ids as they arrived, repeats too. */
  heard: string[] = [];
  rowsAtOnce = 3;
  /** As whom it greets a line; null: it does not say. */
  greets: string | null = null;
  onWritten: (entry: LogEntry) => void = () => {};
  #refused = new Map<string, Refusal>();
  #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  hello(protocol: number): HelloAnswer {
    return protocol === this.protocol ? { ok: true, ...(this.greets === null ? {} : { person: this.greets }) } : refused('OLD_PROGRAM');
  }

  follow(after: number): FollowAnswer {
    return { ok: true, head: this.log.length, entries: structuredClone(this.log.slice(after, after + this.rowsAtOnce)) };
  }

  submit(person: string, { operation, name, input }: Request): SubmitAnswer {
    this.heard.push(operation);
    const mood = this.moods.shift();
    if (mood) return mood;
    const known = this.log.find((entry) => entry.operation === operation);
    if (known) return { ok: true, entry: structuredClone(known) };
    const before = this.#refused.get(operation);
    if (before) return { ok: false, refusal: before };
    const by = this.people.get(person)!;
    const decision = run(this.state, { operation, name, input }, by, FACTS);
    if (!decision.ok) {
      this.#refused.set(operation, decision.refusal);
      return decision;
    }
    const seq = this.log.length + 1;
    const entry: LogEntry = structuredClone({ seq, operation, name, input, events: decision.events, by: by.id, byName: by.name, at: new Date(this.#now()).toISOString() });
    this.state = evolve(this.state, entry);
    this.log.push(entry);
    this.onWritten(entry);
    return { ok: true, entry: structuredClone(entry) };
  }
}

import type { LogEntry } from '../../core/agreement/event.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import { run } from '../../core/agreement/run.ts';
import { arrival } from './arrival.ts';
import { TIMING } from './clock.ts';
import { follow } from './follower.ts';
import type { Hindrance } from './hindrance.ts';
import { predict } from './predict.ts';
import { presence, type Present } from './presence.ts';
import { sender } from './sender.ts';
import type { Outcome, PartSession, PartSessionOptions, PartSnapshot, RefusedLine } from './session.ts';
import { waitingLine } from './waiting.ts';

/**
 * One part as one person has it open: the confirmed state, what they have written on top of it, and the way there and back. Fits
 * `useSyncExternalStore(session.subscribe, session.getSnapshot)`.
 */
export function openPart(options: PartSessionOptions): PartSession {
  const { part, connection, storage, clock, newId, timing = TIMING } = options;
  let { me, facts } = options;
  let refusals: readonly RefusedLine[] = [];
  let people: readonly Present[] = [];
  let trouble: Refusal | null = null;
  let renewed = false;
  let kept = true;
  let gone = false;
  let held: Hindrance | null = null;
  const watchers = new Set<() => void>();
  const outcomes = new Map<string, Outcome>();
  const askers = new Map<string, ((outcome: Outcome) => void)[]>();

  const settle = (operation: string, outcome: Outcome) => {
    outcomes.set(operation, outcome);
    for (const asker of askers.get(operation) ?? []) asker(outcome);
    askers.delete(operation);
  };
  const refuse = (line: RefusedLine) => {
    refusals = [...refusals, line];
    arriving.refused();
    settle(line.operation, { ok: false, refusal: line.refusal });
  };
  /** The server speaks of this part to me. */
  const welcome = () => {
    trouble = null;
    gone = false;
  };
  const onRows = (rows: readonly LogEntry[]) => {
    options.onRows?.(rows);
    const mine = new Set(waiting.list().map(({ operation }) => operation));
    for (const { operation, seq } of rows) {
      if (!mine.has(operation)) continue;
      waiting.drop(operation);
      settle(operation, { ok: true, seq });
    }
    waiting.confirmedTo(follower.state().seq);
    welcome();
    changed();
  };

  const waiting = waitingLine({
    person: me.id,
    part,
    storage,
    onRead() {
      changed();
      line.send();
    },
    onCannotKeep() {
      kept = false;
      changed();
    },
  });
  const follower = follow({
    part,
    connection,
    clock,
    timing,
    state: options.state,
    onRows,
    onCaughtUp() {
      welcome();
      // The server hears where I look only once I follow the part.
      looking.repeat();
      changed();
    },
    onRefused(answer) {
      gone = answer.gone ?? false;
      trouble = answer.refusal;
      changed();
    },
    onAnotherLog() {
      renewed = true;
      changed();
    },
  });
  const line = sender({
    part,
    connection,
    clock,
    timing,
    next: waiting.next,
    onWritten(operation, entry) {
      waiting.written(operation, entry);
      settle(operation, { ok: true, seq: entry.seq });
      follower.took([entry]);
      waiting.confirmedTo(follower.state().seq);
      changed();
    },
    onRefused(operation, refusal) {
      const one = waiting.list().find((other) => other.operation === operation);
      waiting.drop(operation);
      if (one) refuse({ operation, name: one.name, input: one.input, refusal });
      changed();
    },
    onHeld(by) {
      if (held === by) return;
      // Let in again: the library had stopped speaking of the part.
      if (held === 'gone') follower.catchUp();
      held = by;
      changed();
    },
  });
  const arriving = arrival(clock, timing.written, () => changed());
  const looking = presence(part, connection);

  const compute = (): PartSnapshot => {
    const confirmed = follower.state();
    const list = waiting.list();
    const hindrance = connection.hindrance() ?? (gone ? 'gone' : held);
    arriving.see(hindrance !== null, list.length);
    const { state, doubtful } = predict(confirmed, list, me, facts);
    return { state, confirmed, waiting: list, doubtful, refusals, status: connection.status(), hindrance, arrived: arriving.said(), caughtUp: follower.caughtUp(), people, trouble, renewed, kept };
  };
  let snapshot = compute();
  const changed = () => {
    snapshot = compute();
    for (const watcher of [...watchers]) watcher();
  };

  const goLive = () => {
    const signedIn = connection.person();
    // What one has written is never sent as another.
    if (signedIn !== null && signedIn !== me.id) return connection.outdated('another');
    follower.catchUp();
    line.send();
  };
  const leave = connection.join(part, {
    status(status) {
      if (status === 'live') goLive();
      else {
        follower.cut();
        line.cut();
        people = [];
      }
      changed();
    },
    message(name, body) {
      if (name === 'logged' && 'entries' in body) follower.took(body.entries);
      else if (name === 'head' && 'seq' in body) follower.headIs(body.seq);
      else if (name === 'present' && 'people' in body) {
        people = body.people;
        changed();
      } else if (name === 'renewed') {
        renewed = true;
        changed();
      }
    },
  });
  if (connection.status() === 'live') goLive();

  return {
    getSnapshot: () => snapshot,
    subscribe(watcher) {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    submit(name, input) {
      const operation = newId();
      const decision = run(snapshot.state, { operation, name, input }, me, facts);
      if (decision.ok) waiting.add({ operation, name, input, at: new Date(clock.now()).toISOString() });
      else refuse({ operation, name, input, refusal: decision.refusal });
      changed();
      line.send();
      return operation;
    },
    settled(operation) {
      const known = outcomes.get(operation);
      if (known) return Promise.resolve(known);
      return new Promise((resolve) => askers.set(operation, [...(askers.get(operation) ?? []), resolve]));
    },
    dismiss(operation) {
      refusals = refusals.filter((one) => one.operation !== operation);
      changed();
    },
    look: looking.look,
    renew(view) {
      ({ me, facts } = view);
      const another = renewed && view.state.seq < follower.state().seq;
      renewed = false;
      if (another || view.state.seq > follower.state().seq) follower.restart(view.state);
      waiting.confirmedTo(follower.state().seq);
      changed();
    },
    close() {
      leave();
      follower.cut();
      line.cut();
      waiting.close();
      arriving.close();
    },
  };
}

import { randomUUID } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import { systemClock } from '../../../../client/agreement/clock.ts';
import { connect, type Connection } from '../../../../client/agreement/connection.ts';
import { openPart } from '../../../../client/agreement/partSession.ts';
import { queueKey } from '../../../../client/agreement/queue.ts';
import type { PartSession } from '../../../../client/agreement/session.ts';
import { socketWire } from '../../../../client/agreement/socketWire.ts';
import type { OpenWire } from '../../../../client/agreement/wire.ts';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { factsOf } from '../../../../core/agreement/facts.ts';
import { emptyState } from '../../../../core/agreement/state.ts';
import type { Act } from '../acts.ts';
import { print, short, steady, type Note } from '../record/record.ts';
import type { PersonBrief, RoomBrief } from './brief.ts';
import type { DiskQueue } from './diskQueue.ts';

const TIMING = { answer: 6000, pause: 150, longest: 2000, patience: 1500, written: 2000 };

export interface OpenPart {
  part: string;
  session: PartSession;
  act(act: Act): void;
}

/** One opening of a page by one person: the client's own code, with everything that comes and goes noted. */
export interface Page {
  open: OpenPart[];
  connection: Connection;
  /** Asks for a part of another ensemble. */
  pry(): Promise<void>;
  quiet(): boolean;
  /** Notes how it stands. */
  stand(): void;
  close(): void;
}

export interface PageTools {
  room: RoomBrief;
  queue: DiskQueue;
  note: Note;
  onAcknowledged(one: { op: string; part: string; seq: number; person: string }): void;
  onStatus(status: string): void;
}

export function openPage(name: string, who: PersonBrief, cookie: string, { room, queue, note, onAcknowledged, onStatus }: PageTools): Page {
  const heard = new Set<string>();
  const person = who.id;

  function hear(part: string, by: string): void {
    if (heard.has(`${part} ${by}`)) return;
    heard.add(`${part} ${by}`);
    note({ k: 'heard', t: steady(), person, part, by });
  }
  const rowsIn = (answer: unknown): LogEntry[] => {
    const { entries, entry } = answer as { entries?: LogEntry[]; entry?: LogEntry };
    return [...(entries ?? []), ...(entry ? [entry] : [])];
  };

  /** Everything is heard where it comes off the line, before the client decides what to make of it. */
  const tapped: OpenWire = (listener) => {
    const wire = socketWire({ address: who.address, headers: { cookie } })({
      ...listener,
      message(kind, body) {
        if ('entries' in body) body.entries.forEach((row) => hear(body.part, row.by));
        if ('people' in body) body.people.forEach(({ id }) => hear(body.part, id));
        listener.message(kind, body);
      },
    });
    return {
      ...wire,
      async ask(kind, body, ms) {
        const answer = await wire.ask(kind, body, ms);
        if ('part' in body && body.part !== who.foreign) rowsIn(answer).forEach((row) => hear(body.part, row.by));
        return answer;
      },
    };
  };

  const connection = connect({ openWire: tapped, clock: systemClock, timing: TIMING });
  connection.subscribe(() => {
    note({ k: 'status', t: steady(), page: name, person, status: connection.status() });
    onStatus(connection.status());
  });

  const open = who.parts.map((part): OpenPart => {
    note({ k: 'opened', t: steady(), page: name, person, part, seq: 0, waiting: queue.ids(queueKey(person, part)) });
    const watched = new Set<string>();
    let acting = '';
    const session = openPart({
      part,
      connection,
      storage: queue,
      clock: systemClock,
      timing: TIMING,
      newId() {
        const op = randomUUID();
        note({ k: 'written', t: steady(), person, part, op, name: acting });
        return op;
      },
      me: { id: person, name: who.name, roles: who.roles, seat: who.seat },
      facts: factsOf(room.parts[part]!, room.seats),
      state: emptyState(),
      onRows(rows) {
        note({ k: 'rows', t: steady(), page: name, part, from: rows[0]!.seq, ops: rows.map(({ operation }) => short(operation)) });
      },
    });

    function watch(op: string, sent: boolean): void {
      if (watched.has(op)) return;
      watched.add(op);
      void session.settled(op).then((outcome) => {
        if (outcome.ok) {
          note({ k: 'acknowledged', t: steady(), op, part, seq: outcome.seq });
          onAcknowledged({ op, part, seq: outcome.seq, person });
        } else note({ k: 'refused', t: steady(), op, part, code: outcome.refusal.code, sent });
      });
    }
    session.subscribe(() => session.getSnapshot().waiting.forEach(({ operation }) => watch(operation, true)));
    return {
      part,
      session,
      act({ name: what, input }) {
        acting = what;
        const op = session.submit(what, input as never);
        const kept = session.getSnapshot().waiting.some(({ operation }) => operation === op);
        if (kept) note({ k: 'kept', t: steady(), op });
        watch(op, kept);
      },
    };
  });

  return {
    open,
    connection,
    async pry() {
      const followed = await connection.ask('follow', { part: who.foreign, after: 0 }).catch(() => null);
      if (followed) note({ k: 'pried', t: steady(), person, part: who.foreign, how: 'follow', got: followed.ok ? followed.entries.length + 1 : 0 });
      const input = { id: randomUUID(), measure: 1, text: 'From another house.' };
      const written = await connection.ask('submit', { part: who.foreign, operation: randomUUID(), name: 'comment', input }).catch(() => null);
      if (written) note({ k: 'pried', t: steady(), person, part: who.foreign, how: 'submit', got: written.ok ? 1 : 0 });
    },
    quiet: () =>
      open.every(({ session }) => {
        const { status, caughtUp, waiting } = session.getSnapshot();
        return status === 'live' && caughtUp && waiting.length === 0;
      }),
    stand() {
      for (const { part, session } of open) {
        const { state, confirmed, status, waiting } = session.getSnapshot();
        note({ k: 'final', page: name, person, part, seq: confirmed.seq, state: print(confirmed), settled: isDeepStrictEqual(state, confirmed), waiting: waiting.map(({ operation }) => operation), status });
      }
    },
    close() {
      for (const { part, session } of open) {
        note({ k: 'left', t: steady(), page: name, person, part, waiting: session.getSnapshot().waiting.map(({ operation }) => operation) });
        session.close();
      }
      connection.close();
    },
  };
}

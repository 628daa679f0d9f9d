import { randomUUID } from 'node:crypto';
import { systemClock } from '../../../client/agreement/clock.ts';
import { connect, type Connection } from '../../../client/agreement/connection.ts';
import { openPart } from '../../../client/agreement/partSession.ts';
import { memoryQueue } from '../../../client/agreement/queue.ts';
import type { PartSession } from '../../../client/agreement/session.ts';
import { socketWire } from '../../../client/agreement/socketWire.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';

const TIMING = { answer: 2500, pause: 100, longest: 1000, patience: 1500, written: 2000 };

/** Somebody with two parts open, over a bad line. Their pencil (what is not yet sent) outlives a reload, as a browser's does. */
export interface OpenPart {
  view: PartView;
  session: PartSession;
}

export class Person {
  readonly id: string;
  readonly name: string;
  readonly #cookie: string;
  readonly #address: string;
  readonly #storage = memoryQueue();
  readonly #parts: PartView[];
  connection!: Connection;
  open: OpenPart[] = [];
  reloads = 0;

  constructor(who: { id: string; name: string; cookie: string }, address: string, parts: PartView[]) {
    this.id = who.id;
    this.name = who.name;
    this.#cookie = who.cookie;
    this.#address = address;
    this.#parts = parts;
  }

  /** Opens the page from the state it was first given: everything since has to come over the line. */
  load(protocol = PROTOCOL): void {
    this.connection = connect({ openWire: socketWire({ address: this.#address, headers: { cookie: this.#cookie } }), clock: systemClock, timing: TIMING, protocol });
    this.open = this.#parts.map((view) => {
      const me = { id: this.id, name: this.name, roles: view.roles, seat: view.seat };
      const facts = factsOf(view.part, view.section?.seats.map(({ seat }) => seat) ?? []);
      return { view, session: openPart({ part: view.id, connection: this.connection, storage: this.#storage, clock: systemClock, timing: TIMING, newId: randomUUID, me, facts, state: view.state }) };
    });
  }

  close(): void {
    this.open.forEach(({ session }) => session.close());
    this.connection.close();
  }

  reload(): void {
    this.reloads += 1;
    this.close();
    this.load();
  }

  /** Ids that wait for the server's word, by part, in order. */
  waiting(): string[][] {
    return this.open.map(({ session }) => session.getSnapshot().waiting.map(({ operation }) => operation));
  }

  /** Connected, nothing waiting, every row heard. */
  quiet(): boolean {
    return this.open.every(({ session }) => {
      const { status, caughtUp, waiting } = session.getSnapshot();
      return status === 'live' && caughtUp && waiting.length === 0;
    });
  }
}

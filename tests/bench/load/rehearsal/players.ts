import { randomUUID } from 'node:crypto';
import { systemClock } from '../../../../client/agreement/clock.ts';
import { connect, type Connection } from '../../../../client/agreement/connection.ts';
import { openPart } from '../../../../client/agreement/partSession.ts';
import { memoryQueue } from '../../../../client/agreement/queue.ts';
import type { PartSession } from '../../../../client/agreement/session.ts';
import { socketWire } from '../../../../client/agreement/socketWire.ts';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { factsOf } from '../../../../core/agreement/facts.ts';
import type { PartView } from '../../../../core/agreement/wire/http.ts';
import { nextAct } from '../../../server/history/acts.ts';
import { chance } from '../../../support/chance.ts';
import { answering, clock } from '../child.ts';
import type { Player } from '../furnish.ts';
import { actsOf, SECTIONS_OF_AN_ORCHESTRA, stopsOf } from './pace.ts';

export interface Desk {
  section: number;
  part: string;
  players: (Player & { leads: boolean; address: string })[];
}
export type PlayersAsked = { open: Desk[] } | { play: { from: number; seconds: number; seed: number } } | { end: Record<string, number> };
export interface Played {
  /** Milliseconds from the row's time at the server until it was in the state of one client. */
  latencies: number[];
  written: number;
  refused: number;
}

interface Seated {
  section: number;
  nth: number;
  leads: boolean;
  view: PartView;
  session: PartSession;
  connection: Connection;
}

const seated: Seated[] = [];
let latencies: number[] = [];
let from = Infinity;

/** A reader as the browser's own program has them, but for the drawing. */
function sit({ section, part }: Desk, nth: number, { person, name, cookie, seat, leads, address }: Desk['players'][number], view: PartView): Seated {
  const connection = connect({ openWire: socketWire({ address, headers: { cookie } }), clock: systemClock });
  const me = { id: person, name, roles: [leads ? 'principal' : 'player'] as PartView['roles'], seat };
  const facts = factsOf(view.part, view.section?.seats.map((place) => place.seat) ?? []);
  let come: LogEntry[] = [];
  const session = openPart({ part, connection, storage: memoryQueue(), clock: systemClock, newId: randomUUID, me, facts, state: view.state, onRows: (rows) => (come = [...come, ...rows]) });
  session.subscribe(() => {
    const now = clock();
    const { seq } = session.getSnapshot().confirmed;
    for (const row of come) if (row.seq <= seq && Date.parse(row.at) >= from) latencies.push(now - Date.parse(row.at));
    come = come.filter((row) => row.seq > seq);
  });
  return { section, nth, leads, view, session, connection };
}

async function until(holds: () => boolean, seconds: number): Promise<void> {
  const end = performance.now() + seconds * 1000;
  while (!holds()) {
    if (performance.now() > end) throw new Error('Not everybody has everything in time.');
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** A server with its hands full says so, and is asked again, as the page does it. */
async function viewOf(address: string, cookie: string, part: string): Promise<PartView> {
  for (;;) {
    const reply = await fetch(`${address}/api/parts/${part}`, { headers: { cookie } });
    if (reply.ok) return (await reply.json()) as PartView;
    if (reply.status !== 503) throw new Error(`${reply.status} ${await reply.text()}`);
    await new Promise((resolve) => setTimeout(resolve, 300));
  }
}

async function open(desks: Desk[]): Promise<void> {
  for (const desk of desks) {
    const first = desk.players[0]!;
    const view = await viewOf(first.address, first.cookie, desk.part);
    const here = desk.players.map((player, nth) => sit(desk, nth, player, view));
    seated.push(...here);
    await until(() => here.every(({ session }) => session.getSnapshot().caughtUp), 60);
  }
}

async function play({ from: begin, seconds, seed }: Extract<PlayersAsked, { play: unknown }>['play']): Promise<Played> {
  [latencies, from] = [[], begin];
  let [written, refused] = [0, 0];
  const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  await Promise.all(seated.map(async ({ section, nth, leads, view, session }) => {
    const luck = chance(seed + 100 * section + nth);
    const seats = view.section!.seats.map(({ seat }) => seat);
    for (const at of actsOf(stopsOf(Math.floor(section / SECTIONS_OF_AN_ORCHESTRA), seconds, seed), seconds, luck)) {
      await wait(Math.max(0, begin + at * 1000 - clock()));
      const { name, input } = nextAct(session.getSnapshot().state, view.part, seats, leads, luck);
      session.look(1 + luck.below(view.part.measures.length));
      written += 1;
      void session.settled(session.submit(name, input as never)).then(({ ok }) => (refused += ok ? 0 : 1));
    }
  }));
  await until(() => seated.every(({ session }) => session.getSnapshot().waiting.length === 0), 60);
  return { latencies, written, refused };
}

/** Once everybody is as far as the log of their part. */
async function end(heads: Record<string, number>): Promise<void> {
  await until(() => seated.every(({ view, session }) => session.getSnapshot().confirmed.seq === heads[view.id]), 30);
  for (const { session, connection } of seated) {
    session.close();
    connection.close();
  }
}

answering<PlayersAsked>(async (asked) => {
  if ('open' in asked) return open(asked.open);
  if ('play' in asked) return play(asked.play);
  return end(asked.end);
});

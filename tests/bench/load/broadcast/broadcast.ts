import { smallPart } from '../../../support/smallPart.ts';
import { startChild, type Child } from '../child.ts';
import { furnishSection, layParts } from '../furnish.ts';
import { openInstallation } from '../installation.ts';
import { at, inTurns, median, ratio, say } from '../measured.ts';
import type { Heard } from './listeners.ts';

const LISTENERS = (process.env.BOWLINE_LISTENERS ?? '100,1000,5000').split(',').map(Number);
const ROUNDS = Number(process.env.BOWLINE_RUNS ?? 15);
/** Sessions among which the listeners are spread. Chosen, not measured. */
const PEOPLE = 100;
const WARM = 3;

interface Side {
  name: string;
  child: Child;
  port: number;
  send(): Promise<{ at: number }>;
  /** Milliseconds from the moment before the broadcast until each had it. */
  latencies: number[];
  lost: number;
}

/** One broadcast: deliveries a second. */
async function once(side: Side, listeners: Child): Promise<number> {
  const [{ at: from }, { times, lost }] = await Promise.all([side.send(), listeners.ask<Heard>({ await: side.name })]);
  side.lost += lost;
  side.latencies.push(...times.map((time) => time - from));
  return (times.length * 1000) / (Math.max(...times) - from);
}

/** One operation to everybody who follows a part, beside a bare `ws` server that sends the same bytes to as many, heard by the same program. */
export async function broadcast(): Promise<void> {
  const installation = await openInstallation();
  const children: Child[] = [];
  const start = (program: string) => {
    const child = startChild(`broadcast/${program}.ts`);
    children.push(child);
    return child;
  };
  try {
    const section = await furnishSection(installation.store, 'Listeners', PEOPLE);
    const { players } = section;
    const [part] = await layParts(installation.store, section, [smallPart()]);
    const [server, bareServer, listeners] = [start('ours'), start('bare'), start('listeners')];
    const { port } = await server.ask<{ port: number }>({ open: installation.ways });
    const { port: barePort } = await bareServer.ask<{ port: number }>('open');
    let text = '';
    const ours: Side = { name: 'ours', child: server, port, latencies: [], lost: 0, send: () => server.ask({ say: { part, by: players[0], text: 'Shall we try it slower, and in the middle of the bow?' } }) };
    const bare: Side = { name: 'bare', child: bareServer, port: barePort, latencies: [], lost: 0, send: () => bareServer.ask({ send: text }) };
    const held = async (side: Side) => (await side.child.ask<{ bytes: number }>('memory')).bytes;
    say(`broadcast of one operation, from the moment before it is sent until each has it; ${ROUNDS} rounds in turns, one program with as many connections to either, speaking the words of the live face itself`);
    for (const count of LISTENERS) {
      for (const side of [ours, bare]) await listeners.ask({ connect: { name: side.name, port: side.port, part, count, cookies: players.map(({ cookie }) => cookie) } });
      for (let warm = 0; warm < WARM; warm += 1) {
        await ours.send();
        text = (await listeners.ask<Heard>({ await: 'ours' })).text;
        await once(bare, listeners);
      }
      for (const side of [ours, bare]) Object.assign(side, { latencies: [], lost: 0 });
      const [mine, theirs] = await inTurns(ROUNDS, [() => once(ours, listeners), () => once(bare, listeners)]);
      const p99 = at(ours.latencies, 0.99) / at(bare.latencies, 0.99);
      say(`${count} listeners, ${text.length} bytes: ours ${median(mine!).toFixed(0)} deliveries a second, bare ws ${median(theirs!).toFixed(0)}: ratio ${ratio(mine!, theirs!).toFixed(2)} (at least 0.70); p99 ${at(ours.latencies, 0.99).toFixed(1)} and ${at(bare.latencies, 0.99).toFixed(1)} ms: ${p99.toFixed(2)} (at most 1.50); lost ${ours.lost} and ${bare.lost}`);
    }
    const most = Math.max(...LISTENERS);
    const full = [await held(ours), await held(bare)];
    await listeners.stop();
    // Closed connections are let go of before what is left is counted.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    const empty = [await held(ours), await held(bare)];
    say(`memory a connection (heap and buffers, ${most} open against none): ours ${((full[0]! - empty[0]!) / most / 1024).toFixed(1)} KiB, bare ws ${((full[1]! - empty[1]!) / most / 1024).toFixed(1)} KiB`);
  } finally {
    await Promise.all(children.map((child) => child.stop()));
    await installation.close();
  }
}

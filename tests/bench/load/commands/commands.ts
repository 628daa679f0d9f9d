import { randomUUID } from 'node:crypto';
import { createAuthority, type Authority } from '../../../../server/operations/authority.ts';
import { smallPart } from '../../../support/smallPart.ts';
import { furnishSection, layParts, type Player } from '../furnish.ts';
import { openInstallation } from '../installation.ts';
import { at, inTurns, median, ratio, say } from '../measured.ts';
import { bareLog, type BareRow } from './bare.ts';
import { findPgbench, pgbench } from './pgbench.ts';

const CLIENTS = [1, 4, 16, 64];
const ROUNDS = Number(process.env.BOWLINE_RUNS ?? 5);
const SECONDS = 1;

/** As many at once as `clients`, each asking again when it is answered, for a second; how many were answered. */
async function drive(clients: number, ask: (client: number, turn: number) => Promise<void>): Promise<number> {
  const began = performance.now();
  let answered = 0;
  const client = async (number: number) => {
    for (let turn = 0; performance.now() - began < SECONDS * 1000; turn += 1) {
      await ask(number, turn);
      answered += 1;
    }
  };
  await Promise.all(Array.from({ length: clients }, (_, number) => client(number)));
  return (answered * 1000) / (performance.now() - began);
}

async function submit(authority: Authority, part: string, asker: Player, name: string, input: unknown): Promise<void> {
  const answer = await authority.submit(part, { request: { operation: randomUUID(), name, input }, asker });
  if (!answer?.ok) throw new Error(`${name} was not taken: ${JSON.stringify(answer)}`);
}

/** Votes for and against by turns: rows that are written all the time and leave the state as large as it was. */
export async function commands(): Promise<void> {
  const most = Math.max(...CLIENTS);
  const program = findPgbench();
  const installation = await openInstallation();
  const bare = bareLog(installation.ways.app, installation.store.ensemble);
  try {
    const section = await furnishSection(installation.store, 'Load', most);
    const { players } = section;
    const parts = await layParts(installation.store, section, Array.from({ length: 2 * most }, (_, n) => smallPart(`P${n + 1}`)));
    const ours = parts.slice(0, most);
    const theirs = parts.slice(most);
    const authority = createAuthority(installation.store);
    const proposals = ours.map(() => randomUUID());
    for (const [n, part] of ours.entries()) {
      await submit(authority, part, players[0]!, 'propose', { id: proposals[n], from: 1, to: 1, seats: 'all', why: 'It speaks better.', marks: [{ note: `P${n + 1}n1`, value: { kind: 'finger', finger: 1 } }] });
    }
    const votes = players.map(() => 0);
    const vote = (spread: boolean) => (client: number) => {
      const place = spread ? client : 0;
      votes[client]! += 1;
      return submit(authority, ours[place]!, players[client]!, 'castVote', { proposal: proposals[place], revision: 1, measure: 1, vote: votes[client]! % 2 ? 'for' : 'against' });
    };
    const row = (client: number, turn: number): BareRow => {
      const said = { proposal: proposals[0], measure: 1, vote: turn % 2 ? 'for' : 'against' };
      return { name: 'castVote', input: JSON.stringify({ ...said, revision: 1 }), events: JSON.stringify([{ type: 'voteCast', ...said }]), person: players[client]!.person, byName: players[client]!.name };
    };
    const add = (spread: boolean) => (client: number, turn: number) => bare.add(theirs[spread ? client : 0]!, row(client, turn));
    say(`commands a second: authority.submit (queue, rules, log, broadcast to nobody) in one process; the bare statement by pg with the same batching and as many connections${program ? `; by ${program}` : '; no pgbench found'}. ${ROUNDS} rounds of ${SECONDS} s in turns`);
    for (const spread of [false, true]) {
      for (const clients of CLIENTS) {
        if (spread && clients === 1) continue;
        // Warm: the first commands of a part load it, those of a connection prepare its statements.
        await drive(clients, vote(spread));
        // Votes alternate by client, so a client whose last vote fell on another part may begin with what stands there already.
        const ways = [() => drive(clients, vote(spread)), () => drive(clients, add(spread))];
        if (program) ways.push(() => pgbench(program, installation, clients, theirs.slice(0, spread ? clients : 1), players[0]!.person, SECONDS));
        const [mine, pgs, benches] = await inTurns(ROUNDS, ways);
        const of = (values: number[]) => `${median(values).toFixed(0)} (${at(values, 0).toFixed(0)}-${at(values, 1).toFixed(0)})`;
        say(`${String(clients).padStart(2)} clients on ${spread ? `${clients} parts` : 'one part'}: ours ${of(mine!)}, pg ${of(pgs!)}: ratio ${ratio(mine!, pgs!).toFixed(2)}${benches ? `; pgbench ${of(benches)}: ratio ${ratio(mine!, benches).toFixed(2)}` : ''} (at least 0.50)`);
      }
    }
  } finally {
    await bare.close();
    await installation.close();
  }
}

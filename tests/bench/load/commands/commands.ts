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
/** Players and parts of a section where commands are spread. Chosen, not measured. */
const DESK = 4;

/** One client's place: whom it is, the part it writes to, and the one the bare statement writes to instead. */
interface Place {
  player: Player;
  ours: string;
  theirs: string;
  proposal: string;
}

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
    const together = await furnishSection(installation.store, 'Load', most);
    const [ourPart, theirPart] = await layParts(installation.store, together, [smallPart('P1'), smallPart('P2')]);
    const apart: Place[] = [];
    for (let nth = 0; nth < most / DESK; nth += 1) {
      const section = await furnishSection(installation.store, `Load ${nth + 1}`, DESK);
      const parts = await layParts(installation.store, section, Array.from({ length: 2 * DESK }, () => smallPart('P1')));
      section.players.forEach((player, n) => apart.push({ player, ours: parts[n]!, theirs: parts[DESK + n]!, proposal: randomUUID() }));
    }
    const proposal = randomUUID();
    const one = together.players.map((player): Place => ({ player, ours: ourPart!, theirs: theirPart!, proposal }));
    const authority = createAuthority(installation.store);
    for (const { player, ours, proposal: id } of [one[0]!, ...apart]) await submit(authority, ours, player, 'propose', { id, from: 1, to: 1, seats: 'all', why: 'It speaks better.', marks: [{ note: 'P1n1', value: { kind: 'finger', finger: 1 } }] });
    const votes = new Map<Place, number>();
    // Votes alternate over all rounds, so that each changes what stands there.
    const vote = (places: readonly Place[]) => (client: number) => {
      const place = places[client]!;
      votes.set(place, (votes.get(place) ?? 0) + 1);
      return submit(authority, place.ours, place.player, 'castVote', { proposal: place.proposal, revision: 1, measure: 1, vote: votes.get(place)! % 2 ? 'for' : 'against' });
    };
    const row = ({ player, proposal: id }: Place, turn: number): BareRow => {
      const said = { proposal: id, measure: 1, vote: turn % 2 ? 'for' : 'against' };
      return { name: 'castVote', input: JSON.stringify({ ...said, revision: 1 }), events: JSON.stringify([{ type: 'voteCast', ...said }]), person: player.person, byName: player.name };
    };
    const add = (places: readonly Place[]) => (client: number, turn: number) => bare.add(places[client]!.theirs, row(places[client]!, turn));
    say(`commands a second: authority.submit (queue, rules, log, broadcast to nobody) in one process; the bare statement by pg with the same batching and as many connections${program ? `; by ${program}` : '; no pgbench found'}. ${ROUNDS} rounds of ${SECONDS} s in turns`);
    for (const spread of [false, true]) {
      for (const clients of CLIENTS) {
        if (spread && clients === 1) continue;
        // Warm: the first commands of a part load it, those of a connection prepare its statements.
        const places = (spread ? apart : one).slice(0, clients);
        await drive(clients, vote(places));
        const ways = [() => drive(clients, vote(places)), () => drive(clients, add(places))];
        if (program) ways.push(() => pgbench(program, installation, clients, [...new Set(places.map(({ theirs }) => theirs))], places[0]!.player.person, SECONDS));
        const [mine, pgs, benches] = await inTurns(ROUNDS, ways);
        const of = (values: number[]) => `${median(values).toFixed(0)} (${at(values, 0).toFixed(0)}-${at(values, 1).toFixed(0)})`;
        say(`${String(clients).padStart(2)} clients on ${spread ? `${clients} parts, ${DESK} a section` : 'one part'}: ours ${of(mine!)}, pg ${of(pgs!)}: ratio ${ratio(mine!, pgs!).toFixed(2)}${benches ? `; pgbench ${of(benches)}: ratio ${ratio(mine!, benches).toFixed(2)}` : ''} (at least 0.50)`);
      }
    }
  } finally {
    await bare.close();
    await installation.close();
  }
}

import { randomUUID } from 'node:crypto';
import { createAuthority } from '../../../../server/operations/authority.ts';
import type { Store } from '../../../../server/store/store.ts';
import type { Part } from '../../../../core/music/part.ts';
import { nextAct } from '../../../server/history/acts.ts';
import { chance } from '../../../support/chance.ts';
import type { FurnishedSection } from '../furnish.ts';

/** Asked together, so that a batch is worth its commit. Chosen, not measured. */
const TOGETHER = 16;

/** A part's log of `rows` rows, as a section writes them: slips, votes, talk, decisions. Its first is a slip in the first measure that is inked in. */
export async function fillLog(store: Store, { players }: FurnishedSection, id: string, part: Part, rows: number, seed: number): Promise<void> {
  const authority = createAuthority(store);
  const luck = chance(seed);
  const seats = players.map(({ seat }) => seat);
  const ask = (player: number, name: string, input: unknown) => authority.submit(id, { request: { operation: randomUUID(), name, input }, asker: players[player]! });
  const first = randomUUID();
  const note = part.measures[0]!.notes.find(({ rest }) => !rest)!;
  await ask(0, 'propose', { id: first, from: 1, to: 1, seats: 'all', why: 'It lies better in the hand.', marks: [{ note: note.id, value: { kind: 'finger', finger: 3 } }] });
  await ask(0, 'adopt', { proposal: first, revision: 1, why: '' });
  for (let state = (await authority.current(id))!.state; state.seq < rows; state = (await authority.current(id))!.state) {
    const few = Math.min(TOGETHER, rows - state.seq);
    await Promise.all(Array.from({ length: few }, () => {
      const player = luck.below(players.length);
      const { name, input } = nextAct(state, part, seats, player === 0, luck);
      return ask(player, name, input);
    }));
  }
}

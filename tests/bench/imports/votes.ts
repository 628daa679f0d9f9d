import { randomUUID } from 'node:crypto';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import type { SignedIn } from '../../server/history/library.ts';

const PACE_MS = 60;

export interface Voting {
  /** Votes one after another at a steady pace; milliseconds each took. */
  votes(count: number): Promise<number[]>;
  /** The same as long as something else goes on. */
  during<Result>(other: () => Promise<Result>): Promise<{ times: number[]; result: Result }>;
}

/** A player with a slip of their own on a part, who goes on changing their mind about it. */
export async function openVoting(address: string, player: SignedIn, view: PartView): Promise<Voting> {
  const note = view.part.measures[0]!.notes.find(({ rest }) => !rest)!;
  const id = randomUUID();
  async function operate(name: string, input: unknown): Promise<number> {
    const start = performance.now();
    const reply = await fetch(`${address}/api/parts/${view.id}/operations/${name}`, { method: 'POST', headers: { cookie: player.cookie, 'content-type': 'application/json' }, body: JSON.stringify({ operation: randomUUID(), input }) });
    const text = await reply.text();
    if (!reply.ok) throw new Error(`${name}: ${reply.status} ${text}`);
    return performance.now() - start;
  }
  await operate('propose', { id, from: 1, to: 1, seats: 'all', why: 'It lies better in the hand.', marks: [{ note: note.id, value: { kind: 'bow', bow: 'up' } }] });
  let inFavour = false;
  async function vote(): Promise<number> {
    inFavour = !inFavour;
    const took = await operate('castVote', { proposal: id, revision: 1, measure: 1, vote: inFavour ? 'for' : 'against' });
    await new Promise((resolve) => setTimeout(resolve, PACE_MS));
    return took;
  }
  return {
    async votes(count) {
      const times: number[] = [];
      while (times.length < count) times.push(await vote());
      return times;
    },
    async during(other) {
      const times: number[] = [];
      let over = false;
      const result = other().finally(() => (over = true));
      result.catch(() => undefined);
      while (!over) times.push(await vote());
      return { times, result: await result };
    },
  };
}

export function summary(times: readonly number[]): { median: number; p95: number } {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  return { median: at(0.5), p95: at(0.95) };
}

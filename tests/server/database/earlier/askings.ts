import { createHash } from 'node:crypto';
import type { Answer } from './guest.ts';

export type Role = 'librarian' | 'principal' | 'player';

/** One question to the server and what it said: JSON and tables whole, documents by their sum. */
export interface Asking {
  as: Role;
  path: string;
  answer: unknown;
}

interface Shelf {
  programmes: { id: string; works: { id: string; parts: { id: string; section: { id: string } | null }[] }[] }[];
  sections: { id: string; seats: { seat: string }[] }[];
}

const asJson = ({ type, bytes }: Answer): unknown => {
  if (type.startsWith('application/json')) return JSON.parse(bytes.toString());
  if (type.startsWith('text/')) return bytes.toString();
  return { sha256: createHash('sha256').update(bytes).digest('hex') };
};

/** What is kept of an answer; undefined where the version had no such page, or the reader may not see it. */
export const kept = (answer: Answer): unknown => (answer.status === 200 ? asJson(answer) : undefined);

/** What somebody may read of a library, for whoever it concerns. */
export async function askAll(ask: (as: Role, path: string) => Promise<Answer>): Promise<Asking[]> {
  const askings: Asking[] = [];
  const want = async (as: Role, path: string): Promise<unknown> => {
    const answer = kept(await ask(as, path));
    if (answer !== undefined) askings.push({ as, path, answer });
    return answer;
  };
  const shelf = (await want('librarian', '/api/shelf')) as Shelf;
  for (const as of ['librarian', 'principal', 'player'] as const) for (const what of ['', '/hand', '/letters', '/waiting']) await want(as, `/api/me${what}`);
  await want('librarian', '/api/archive');
  for (const { id: programme, works } of shelf.programmes) {
    await want('librarian', `/api/programmes/${programme}/overview`);
    for (const { id: work, parts } of works) {
      await want('librarian', `/api/works/${work}/errata`);
      for (const part of parts) await askPart(want, part, shelf);
    }
  }
  return askings;
}

async function askPart(want: (as: Role, path: string) => Promise<unknown>, { id, section }: { id: string; section: { id: string } | null }, shelf: Shelf): Promise<void> {
  const of = `/api/parts/${id}`;
  const view = (await want('librarian', of)) as { head: number };
  await want('player', of);
  for (let after = 0; after < view.head; after += 500) await want('librarian', `${of}/log?after=${after}`);
  const seats = shelf.sections.find((one) => one.id === section?.id)?.seats ?? [];
  // A part of which nothing is written but that it was laid over comes out as its source, which is asked for anyway.
  const readers = view.head > 1 ? ['section', ...seats.slice(0, 2).map(({ seat }) => seat)] : [];
  for (const reader of readers) await want('librarian', `${of}/export?for=${reader}`);
  for (const page of ['/source', '/changes?form=csv', '/carried', '/revisions', '/erasures', `/revisions/${Math.floor(view.head / 2)}`]) await want('librarian', of + page);
}

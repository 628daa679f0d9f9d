import { openHouse, type House, type Visitor } from '../../../support/house.ts';
import type { Deps } from '../../../../server/http/deps.ts';
import type { Post } from '../../../../server/mail/post.ts';
import { layOut, type LaidOut } from '../../../support/laidOut.ts';
import { inMemory } from '../../../support/oneEnsemble.ts';

/** A house whose clock is turned by hand and whose letters are kept. */
export interface Entrance {
  house: House;
  laid: LaidOut;
  letters: { to: string; subject: string; text: string }[];
  /** Sessions that were ended so that their sockets are dropped. */
  dropped: string[];
  pass(minutes: number): void;
  /** Signed in by a way of their own, just now. */
  enter(person: { id: string }): Promise<Visitor>;
}

export async function openEntrance(more: Partial<Deps> = {}): Promise<Entrance> {
  let at = Date.now();
  const letters: Entrance['letters'] = [];
  const dropped: string[] = [];
  const post: Pick<Post, 'send'> = { send: async (letter) => void letters.push(letter) };
  const store = await inMemory();
  const laid = await layOut(store);
  const house = await openHouse(store, { post, now: () => new Date(at), ...more });
  house.deps.notices.listen({ signedOut: (session) => dropped.push(session) });
  return { house, laid, letters, dropped, pass: (minutes) => (at += minutes * 60_000), enter: (person) => house.signIn(person) };
}

/** The token of the link in a letter. */
export const linkIn = (text: string, kind: 'token' | 'confirm' = 'token'): string => new RegExp(`[?&]${kind}=([\\w-]+)`).exec(text)![1]!;

/** Somebody's address, confirmed, as if by a letter before. */
export const knows = (house: House, person: { id: string }, address: string): Promise<boolean> => house.store.door.setAddress(person.id, { address, language: 'de' }, new Date());

import type { Authority } from '../operations/authority.ts';
import type { Store } from '../store/store.ts';
import { programmesOpenTo } from '../store/programmeEnd.ts';
import { waitingOf } from '../waiting/waitingOf.ts';
import { hasPassed } from './hasPassed.ts';
import { letterFor } from './letterFor.ts';
import type { Post } from './post.ts';

export interface LettersHouse {
  store: Store;
  authority: Authority;
  post: Post;
  /** A person gets one letter at most in so many minutes. */
  minutes: number;
  /** Of the library, as it is opened in a browser. */
  address: string;
  log: (line: string, context?: unknown) => void;
}

/** Goes round once: whoever wants letters and has something to be told gets one, unless the last is too fresh. A letter the post does not take is tried again the next time. Gives how many went out. */
export async function goRound({ store, authority, post, minutes, address, log }: LettersHouse, now: Date): Promise<number> {
  let sent = 0;
  for (const correspondent of await store.attention.correspondents()) {
    if (correspondent.sentAt && !hasPassed(minutes * 60_000, correspondent.sentAt, now)) continue;
    const person = await store.people.byId(correspondent.person);
    if (!person) continue;
    const programmes = await programmesOpenTo(store.people, person, now);
    const letter = letterFor(correspondent, await waitingOf({ store, authority }, { ...person, programmes }, correspondent.known), now, { minutes, address });
    if (!letter) continue;
    try {
      await post.send(letter);
    } catch (reason) {
      log('A letter was not taken by the post; it is tried again.', reason);
      continue;
    }
    sent += 1;
    await store.attention.tell(correspondent.person, letter.told, { sentAt: now, ...(letter.reminds ? { remindedAt: now } : {}) });
  }
  return sent;
}

/** How often it is looked whether a letter is due, in milliseconds. Chosen, not measured. */
const LOOK_EVERY = 60_000;

/** Goes round all ensembles every minute, one round at a time, until stopped. */
export function startRounds({ halls, alone, ...house }: Omit<LettersHouse, 'store' | 'authority'> & { halls: () => Promise<Pick<LettersHouse, 'store' | 'authority'>[]>; alone: (work: () => Promise<void>) => Promise<boolean> }): () => Promise<void> {
  async function goEverywhere(): Promise<void> {
    for (const { store, authority } of await halls()) await goRound({ ...house, store, authority }, new Date());
  }
  let under: Promise<unknown> | null = null;
  const timer = setInterval(() => {
    // Of several servers one goes round at a time, and the next one finds who was written to.
    under ??= alone(goEverywhere)
      .catch((reason: unknown) => house.log('A round of letters broke off; the next one goes on.', reason))
      .finally(() => (under = null));
  }, LOOK_EVERY);
  return async () => {
    clearInterval(timer);
    await under;
    house.post.close();
  };
}

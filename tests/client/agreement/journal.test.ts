import { describe, expect, it } from 'vitest';
import { journalled, type Journal } from '../../../client/agreement/journal.ts';
import { memoryQueue, queued, unqueued, type Queued, type QueueStorage } from '../../../client/agreement/queue.ts';

const KEY = 'unsent/piet/violin';
const line = (operation: string): Queued => ({ operation, name: 'vote', input: {}, at: '2026-11-26T08:00:00Z' });

function heldJournal(): Journal {
  const held = new Map<string, string>();
  return { read: (key) => JSON.parse(held.get(key) ?? '[]') as Queued[], write: (key, list) => void held.set(key, JSON.stringify(list)) };
}

/** A large storage whose next change never comes to its end: the page is left first. */
function leftWhileWriting(storage: QueueStorage): QueueStorage {
  return { load: (key) => storage.load(key), change: () => new Promise(() => undefined) };
}

const names = (list: readonly Queued[]) => list.map(({ operation }) => operation);

describe('a queue with a journal', () => {
  it('has what was written in the moment the page was left, after what was there before', async () => {
    const [storage, journal] = [memoryQueue(), heldJournal()];
    await journalled(storage, journal).change(KEY, (list) => queued(list, line('a')));
    void journalled(leftWhileWriting(storage), journal).change(KEY, (list) => queued(list, line('b')));
    expect(names(await storage.load(KEY))).toEqual(['a']);
    expect(names(await journalled(storage, journal).load(KEY))).toEqual(['a', 'b']);
    expect(names(await storage.load(KEY))).toEqual(['a', 'b']);
  });

  it('keeps nothing in the journal once it is written, and nothing twice', async () => {
    const [storage, journal] = [memoryQueue(), heldJournal()];
    const both = journalled(storage, journal);
    await Promise.all(['a', 'b', 'c'].map((name) => both.change(KEY, (list) => queued(list, line(name)))));
    expect(journal.read(KEY)).toEqual([]);
    expect(names(await both.load(KEY))).toEqual(['a', 'b', 'c']);
  });

  it('takes a line back from both, also one that was only in the journal', async () => {
    const [storage, journal] = [memoryQueue(), heldJournal()];
    void journalled(leftWhileWriting(storage), journal).change(KEY, (list) => queued(list, line('a')));
    await journalled(storage, journal).change(KEY, (list) => unqueued(list, 'a'));
    expect(names(await journalled(storage, journal).load(KEY))).toEqual([]);
  });
});

import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Queued, QueueStorage } from '../../../../client/agreement/queue.ts';

export interface DiskQueue extends QueueStorage {
  /** Ids that wait, in order, read at once. */
  ids(key: string): string[];
}

/** What is not yet sent, in files: it outlives a kill of its process as a browser's storage does. A file is exchanged whole. */
export function diskQueue(folder: string): DiskQueue {
  mkdirSync(folder, { recursive: true });
  const at = (key: string) => join(folder, key.replaceAll('/', '_'));
  const read = (key: string): Queued[] => {
    try {
      return JSON.parse(readFileSync(at(key), 'utf8')) as Queued[];
    } catch {
      return [];
    }
  };
  return {
    load: async (key) => read(key),
    async change(key, edit) {
      writeFileSync(`${at(key)}.new`, JSON.stringify(edit(read(key))));
      renameSync(`${at(key)}.new`, at(key));
    },
    ids: (key) => read(key).map(({ operation }) => operation),
  };
}

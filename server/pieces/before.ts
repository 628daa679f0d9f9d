import type { AgreementEvent } from '../../core/agreement/event.ts';
import type { PartLog } from '../store/partLog.ts';

/** What there is to watch hangs on these; slips, votes and talk change nothing of it. */
const CHANGING: readonly AgreementEvent['type'][] = ['adopted', 'muted', 'unmuted'];
const ROWS_AT_ONCE = 500;

export interface Since {
  id: string;
  name: string;
  /** Read to here. */
  head: number;
  changed: boolean;
}

/** Names of the parts in which marks or what is put to rest have changed since. Reads only rows it has not read before. */
export async function changedSince(log: PartLog, parts: readonly Since[]): Promise<string[]> {
  const heads = await log.heads(parts.map(({ id }) => id));
  for (const part of parts) {
    while (!part.changed && (heads.get(part.id) ?? 0) > part.head) {
      const rows = (await log.entries(part.id, part.head, ROWS_AT_ONCE))?.entries ?? [];
      part.changed = rows.some(({ events }) => events.some(({ type }) => CHANGING.includes(type)));
      part.head = rows.at(-1)?.seq ?? heads.get(part.id)!;
    }
  }
  return parts.filter(({ changed }) => changed).map(({ name }) => name);
}

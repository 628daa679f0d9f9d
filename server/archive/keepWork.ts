import type { LogEntry } from '../../core/agreement/event.ts';
import { seatsOf } from '../../core/agreement/seating.ts';
import { keptMarks, type KeptPart, type KeptSet, type KeptUnder } from '../../core/archive/keptSet.ts';
import type { StoredPart } from '../store/library.ts';
import type { Store } from '../store/store.ts';

const PAGE = 2000;

export async function wholeLog(store: Store, part: string, upTo = Infinity): Promise<LogEntry[]> {
  const rows: LogEntry[] = [];
  for (;;) {
    const page = await store.log.entries(part, rows.length, PAGE);
    if (!page || page.entries.length === 0) return rows;
    rows.push(...page.entries.filter(({ seq }) => seq <= upTo));
    if (rows.length >= Math.min(page.head, upTo)) return rows;
  }
}

async function keptPart(store: Store, part: StoredPart): Promise<KeptPart> {
  const section = await store.sections.ofPart(part.id);
  return { content: part.content, section: section?.name ?? null, seats: seatsOf(section), log: await wholeLog(store, part.id) };
}

/** The marks of a work as a set to be kept: every part something is inked in on. null when there is no such work, or nothing is inked in. */
export async function keptWork(store: Store, work: string, under: KeptUnder, stamp: { id: string; by: string; at: Date }): Promise<KeptSet | null> {
  const stored = await store.library.partsOf(work);
  const parts = (await Promise.all(stored.map((part) => keptPart(store, part)))).filter((part) => keptMarks(part).length > 0);
  const first = stored[0];
  const source = first ? await store.library.source(first.edition) : null;
  if (!first || !source || parts.length === 0) return null;
  const { title, composer } = first.work;
  return { id: stamp.id, title, composer, ...under, bytes: source.bytes, fileName: source.fileName, keptBy: stamp.by, keptAt: stamp.at.toISOString(), parts };
}

import { factsOf } from '../../core/agreement/facts.ts';
import { replay } from '../../core/agreement/replay.ts';
import { emptyState, type AgreementState, type PartFacts } from '../../core/agreement/state.ts';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import type { LogEntry } from '../../core/agreement/event.ts';
import type { Place } from '../store/partLog.ts';
import type { Store } from '../store/store.ts';

/** A part as the server holds it ready: where its log stands, what that comes to, and the notes the rules ask for. */
export interface LoadedPart {
  place: Place;
  state: AgreementState;
  notes: Omit<PartFacts, 'seats'>;
}

const PAGE = 2000;

/** Loads a part from its latest snapshot and the rows after it. null when there is no such part. */
export async function loadPart(store: Store, id: string): Promise<LoadedPart | null> {
  const music = await loadMusic(store, id);
  if (!music) return null;
  const start = (await store.log.snapshot(id, PROTOCOL)) ?? emptyState();
  const state = replay(await rowsAfter(store, id, start.seq), start);
  return { place: { head: state.seq, revision: music.revision, rewritten: music.rewritten }, state, notes: music.notes };
}

/** The same part with the rows that were added and, where it was corrected, the music since; the new rows too, every one of them. */
export async function catchUp(store: Store, id: string, part: LoadedPart): Promise<{ part: LoadedPart; rows: LogEntry[] } | null> {
  const place = await store.log.place(id);
  if (!place) return null;
  // Music is large and hardly ever corrected; rows come all the time where several servers write.
  const music = place.revision === part.place.revision ? { notes: part.notes, revision: place.revision } : await loadMusic(store, id);
  if (!music) return null;
  const rows = await rowsAfter(store, id, part.place.head);
  if (place.rewritten !== part.place.rewritten) {
    // Names stand in the state itself: it is built anew.
    const anew = await loadPart(store, id);
    return anew && { part: anew, rows };
  }
  const state = replay(rows, part.state);
  return { part: { place: { head: state.seq, revision: music.revision, rewritten: place.rewritten ?? 0 }, state, notes: music.notes }, rows };
}

async function loadMusic(store: Store, id: string): Promise<Pick<LoadedPart, 'notes'> & { revision: number; rewritten: number } | null> {
  const stored = await store.library.part(id);
  if (!stored) return null;
  const { measures, notes } = factsOf(stored.content, []);
  return { notes: { measures, notes }, revision: stored.revision, rewritten: stored.rewritten };
}

async function rowsAfter(store: Store, id: string, after: number): Promise<LogEntry[]> {
  const rows: LogEntry[] = [];
  for (;;) {
    const from = rows.at(-1)?.seq ?? after;
    const page = await store.log.entries(id, from, PAGE);
    if (!page || page.entries.length === 0) return rows;
    rows.push(...page.entries);
    if (rows.at(-1)!.seq >= page.head) return rows;
  }
}

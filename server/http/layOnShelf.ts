import type { ImportAnswer, Trouble } from '../../core/agreement/wire/http.ts';
import { samePart } from '../../core/matching/editions/samePart.ts';
import type { Part } from '../../core/music/part.ts';
import { movementOf, namedApart, workTitle } from '../imports/movements.ts';
import { partsOfFile } from '../imports/oneFile.ts';
import { readFiles, type ReadFile } from '../imports/readFiles.ts';
import type { Watch } from '../imports/watch.ts';
import type { NewEdition, NewFile, RenewedPart } from '../store/library.ts';
import type { Store } from '../store/store.ts';
import type { Documents } from './deps.ts';
import { placeParts } from './placeParts.ts';

export type Laid = { ok: true; answer: ImportAnswer; parts: string[] } | { ok: false; trouble: Trouble } | { ok: false; missing: true };

type Tools = { store: Store; documents: Documents };

const notes = (part: Part): number => part.measures.reduce((sum, measure) => sum + measure.notes.length, 0);
const notesOf = (files: readonly NewFile[]): number => files.reduce((sum, { parts }) => sum + parts.reduce((all, { content }) => all + notes(content), 0), 0);

/** A new work out of its files: all their string parts, each with the section it plainly belongs to. All or nothing. */
export async function importWork(tools: Tools, programme: string, editions: readonly NewEdition[], watch: Watch = {}): Promise<Laid> {
  const read = await readFiles(tools.documents, editions, watch);
  if (!read.ok) return read;
  watch.onStep?.('laying');
  const { title, composer } = { title: workTitle(read.files), composer: read.files.find(({ score }) => score.composer)?.score.composer ?? '' };
  const [first, ...further] = await placed(tools, namedApart(read.files));
  const count = { kept: 0, added: notesOf([first!, ...further]), removed: 0 };
  keep(watch);
  const work = await tools.store.library.addWork(programme, { title, composer }, first!.edition, first!.parts, further, watch.ending?.(count));
  return work ? { ok: true, answer: { work, notes: count }, parts: work.parts.map((part) => part.id) } : { ok: false, missing: true };
}

/** Further files for a work that is there: their parts lie beside those it has. All or nothing. */
export async function importParts(tools: Tools, work: string, editions: readonly NewEdition[], watch: Watch = {}): Promise<Laid> {
  const before = await tools.store.library.work(work);
  if (!before) return { ok: false, missing: true };
  const read = await readFiles(tools.documents, editions, watch);
  if (!read.ok) return read;
  watch.onStep?.('laying');
  const files = await placed(tools, namedApart(read.files, before.parts.map(({ name }) => name)));
  const count = { kept: 0, added: notesOf(files), removed: 0 };
  keep(watch);
  const view = await tools.store.library.addFiles(work, files, watch.ending?.(count));
  return view ? { ok: true, answer: { work: view, notes: count }, parts: [] } : { ok: false, missing: true };
}

async function placed(tools: Tools, files: readonly ReadFile[]): Promise<NewFile[]> {
  const parts = files.flatMap((file) => file.parts);
  const places = placeParts(parts, await tools.store.sections.all());
  return files.map(({ edition, parts: own }) => ({ edition, parts: own.map((content) => ({ content, section: places[parts.indexOf(content)] ?? null })) }));
}

/** The last place where an import can be stopped: what follows is one transaction. */
function keep({ signal, onStep }: Watch): void {
  signal?.throwIfAborted();
  onStep?.('keeping');
}

/**
 * A corrected file for a work that is there. Notes keep their ids where the music is the same, so every mark stays on its note; what cannot go along is told by
 * `carriedPlaces`, from the music that was there.
 */
export async function importEdition(tools: Tools, work: string, edition: NewEdition, watch: Watch = {}): Promise<Laid> {
  const { library, sections } = tools.store;
  const all = await library.partsOf(work);
  if (all.length === 0) return { ok: false, missing: true };
  const read = await readFiles(tools.documents, [edition], watch);
  if (!read.ok) return read;
  watch.onStep?.('laying');
  const { stored, parts } = partsOfFile(all, read.files[0]!.parts, movementOf(edition.fileName));
  const left = new Set(parts);
  const count = { kept: 0, added: 0, removed: 0 };
  const changed: RenewedPart[] = [];
  for (const { id, content, revision } of stored) {
    watch.signal?.throwIfAborted();
    const match = samePart(content, [...left]);
    if (!match) return { ok: false, trouble: { code: 'PART_MISSING', text: `Nothing was imported: the corrected file has no part "${content.name}". Put the part back into the file and send it again.`, part: content.name } };
    left.delete(match);
    const aligned = await tools.documents.realign(match, content, revision);
    count.kept += aligned.kept;
    count.added += aligned.added;
    count.removed += aligned.removed;
    changed.push({ id, content: aligned.part, measures: aligned.measures });
  }
  const added = [...left];
  const places = placeParts(added, await sections.all());
  count.added += added.reduce((sum, part) => sum + notes(part), 0);
  keep(watch);
  const view = await library.addEdition(work, edition, changed, added.map((content, index) => ({ content, section: places[index] ?? null })), watch.ending?.(count));
  return { ok: true, answer: { work: view, notes: count }, parts: changed.map((part) => part.id) };
}

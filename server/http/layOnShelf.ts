import type { ImportAnswer, Trouble } from '../../core/agreement/wire/http.ts';
import { samePart } from '../../core/matching/editions/samePart.ts';
import type { Part } from '../../core/music/part.ts';
import type { NewEdition, RenewedPart } from '../store/library.ts';
import type { Store } from '../store/store.ts';
import type { Documents } from './deps.ts';
import { placeParts } from './placeParts.ts';

export type Laid = { ok: true; answer: ImportAnswer; parts: string[] } | { ok: false; trouble: Trouble } | { ok: false; missing: true };

type Tools = { store: Store; documents: Documents };

const NO_STRINGS: Trouble = { code: 'NO_STRING_PARTS', text: 'Nothing was imported: the score has no part for violin, viola, cello or double bass. Name the parts by their instrument and send it again.' };
const notes = (part: Part): number => part.measures.reduce((sum, measure) => sum + measure.notes.length, 0);

async function stringParts({ documents }: Tools, edition: NewEdition) {
  const read = await documents.importScore(edition.bytes, edition.fileName);
  if (!read.ok) return read;
  const parts = read.score.parts.filter((part) => part.instrument !== null);
  return parts.length ? ({ ok: true, score: read.score, parts } as const) : ({ ok: false, trouble: NO_STRINGS } as const);
}

/** A new work: all its string parts, each with the section it plainly belongs to. All or nothing. */
export async function importWork(tools: Tools, programme: string, edition: NewEdition): Promise<Laid> {
  const read = await stringParts(tools, edition);
  if (!read.ok) return read;
  const { score, parts } = read;
  const places = placeParts(parts, await tools.store.sections.all());
  const heading = { title: score.title || edition.fileName.replace(/\.\w+$/, ''), composer: score.composer };
  const work = await tools.store.library.addWork(programme, heading, edition, parts.map((content, index) => ({ content, section: places[index] ?? null })));
  if (!work) return { ok: false, missing: true };
  const added = parts.reduce((sum, part) => sum + notes(part), 0);
  return { ok: true, answer: { work, notes: { kept: 0, added, removed: 0 } }, parts: work.parts.map((part) => part.id) };
}

/**
 * A corrected file for a work that is there. Notes keep their ids where the music is the same, so every mark stays on its note; what cannot go along is told by
 * `carriedPlaces`, from the music that was there.
 */
export async function importEdition(tools: Tools, work: string, edition: NewEdition): Promise<Laid> {
  const { library, sections } = tools.store;
  const stored = await library.partsOf(work);
  if (stored.length === 0) return { ok: false, missing: true };
  const read = await stringParts(tools, edition);
  if (!read.ok) return read;
  const left = new Set(read.parts);
  const count = { kept: 0, added: 0, removed: 0 };
  const changed: RenewedPart[] = [];
  for (const { id, content, revision } of stored) {
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
  const view = await library.addEdition(work, edition, changed, added.map((content, index) => ({ content, section: places[index] ?? null })));
  return { ok: true, answer: { work: view, notes: count }, parts: changed.map((part) => part.id) };
}

import { createHash } from 'node:crypto';
import type { SectionView, WorkView } from '../../core/agreement/wire/http.ts';
import type { Store } from '../store/store.ts';

/** What a part is read by besides its log, in a few letters: its music, who sits at it, what the section has settled. Another text means something was exchanged. */
export const groundOf = (revision: number, section: SectionView | null): string =>
  createHash('sha256').update(JSON.stringify([revision, section?.id, section?.seats, section?.settings])).digest('base64').slice(0, 16);

/** The same for all parts of a work; parts of one section share its seats, which are asked for once. */
export async function groundsOf({ sections }: Pick<Store, 'sections'>, { parts }: WorkView): Promise<Map<string, string>> {
  const views = new Map<string | null, SectionView | null>([[null, null]]);
  const grounds = new Map<string, string>();
  for (const { id, section, revision } of parts) {
    const key = section?.id ?? null;
    if (!views.has(key)) views.set(key, await sections.ofPart(id));
    grounds.set(id, groundOf(revision, views.get(key)!));
  }
  return grounds;
}

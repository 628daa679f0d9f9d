import { isAlike, musicPrints, shareOf } from '../../core/archive/alike.ts';
import type { OfferView } from '../../core/archive/wire.ts';
import type { Store } from '../store/store.ts';

/** Share of the music that makes a work known under another heading. Chosen, not measured. */
const SAME_WORK = 0.5;

/** Sets of earlier seasons that fit a work, best first. null when there is no such work. */
export async function offersFor(store: Store, work: string): Promise<OfferView[] | null> {
  const [parts, sets, prints] = await Promise.all([store.library.partsOf(work), store.archive.sets(), store.archive.prints()]);
  const [first] = parts;
  if (!first) return null;
  const here = parts.map(({ content }) => musicPrints(content));
  return sets
    .map((set): OfferView => {
      const share = Math.max(0, ...(prints.get(set.id) ?? []).flatMap((kept) => here.map((part) => shareOf(part, kept))));
      return { ...set, by: isAlike(first.work, set) ? 'heading' : 'music', share };
    })
    .filter(({ by, share }) => by === 'heading' || share >= SAME_WORK)
    .sort((a, b) => b.share - a.share);
}

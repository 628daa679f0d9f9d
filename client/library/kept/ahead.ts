import type { Me, PartView, Shelf } from '../../../core/agreement/wire/http.ts';
import { askText, keptJson, library } from './library.ts';
import { fetchPart, keepAhead, liesHere } from './parts.ts';
import { wantedAhead } from './policy.ts';

/** Pause between two parts, in milliseconds: what is on the stand comes first. Chosen, not measured. */
const PAUSE = 1_500;

const pause = () => new Promise((resolve) => setTimeout(resolve, PAUSE));

/** Fetches the parts of this programme one will want next, one after another, while there is a line and `wanted` holds. */
export async function fetchAhead(me: Me, view: PartView, wanted: () => boolean): Promise<void> {
  const shelf = await keptJson<Shelf>('/shelf');
  const parts = wantedAhead(shelf, view.work.id, me.id);
  await keepAhead(parts.map(({ id }) => id));
  for (const { id, head } of parts) {
    await pause();
    if (!wanted() || library.away()) return;
    if (id === view.id || (await liesHere(id, head))) continue;
    await Promise.all([fetchPart(id), askText(`/parts/${id}/engraving`)]);
  }
}

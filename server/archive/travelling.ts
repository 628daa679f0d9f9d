import { numberAt } from '../../core/music/printedNumber.ts';
import { inForce } from '../../core/agreement/inForce.ts';
import type { PartFacts } from '../../core/agreement/state.ts';
import type { BroughtIn, TravelView } from '../../core/archive/wire.ts';
import type { MarkedPart } from '../../core/matching/carryBowing.ts';
import { travel, type Travelled } from '../../core/matching/travel.ts';
import { partNow, type House } from '../operations/partNow.ts';
import type { StoredPart } from '../store/library.ts';
import type { Asker } from '../store/partLog.ts';
import { layMarks } from './layMarks.ts';

interface There {
  stored: StoredPart;
  section: string | null;
  facts: PartFacts;
  passages: Travelled[];
}

async function marked(house: House, stored: StoredPart): Promise<{ part: MarkedPart; section: string | null; facts: PartFacts }> {
  const { section, state, facts } = await partNow(house, stored);
  return { part: { part: stored.content, marks: inForce(state, facts.seats), seats: facts.seats }, section: section?.name ?? null, facts };
}

/** Where the other parts of a work play what one of them plays. null when the part is not one of the work's. */
async function lookedThrough(house: House, work: string, from: string): Promise<{ model: StoredPart; name: string; there: There[] } | null> {
  const parts = await house.store.library.partsOf(work);
  const model = parts.find(({ id }) => id === from);
  if (!model) return null;
  const own = await marked(house, model);
  const there: There[] = [];
  for (const stored of parts) {
    if (stored === model) continue;
    const { part, section, facts } = await marked(house, stored);
    there.push({ stored, section, facts, passages: travel(own.part, part) });
  }
  return { model, name: own.section ?? model.content.name, there };
}

const keyIn = (part: string, key: string): string => `${part} ${key}`;

/** The passages of the other parts that could be bowed as this one is. */
export async function travelView(house: House, work: string, from: string): Promise<TravelView | null> {
  const looked = await lookedThrough(house, work, from);
  return (
    looked && {
      passages: looked.there.flatMap(({ stored, section, passages }) =>
        passages.map(({ key, likeness, from: first, to, marks }) => {
          const number = (ordinal: number): string => numberAt(stored.content, ordinal);
          return { key: keyIn(stored.id, key), part: stored.id, name: stored.content.name, section, likeness, from: first, to, numbers: [number(first), number(to)] as [string, string], marks: marks.length };
        }),
      ),
    }
  );
}

/** Lays the bows of the chosen passages as slips that name their source. */
export async function sendBows(house: House, work: string, wish: { from: string; keys: readonly string[]; asking: string; asker: Asker }): Promise<BroughtIn | null> {
  const looked = await lookedThrough(house, work, wish.from);
  if (!looked) return null;
  const brought: BroughtIn = { parts: [] };
  for (const { stored, facts, passages } of looked.there) {
    const chosen = passages.filter(({ key }) => wish.keys.includes(keyIn(stored.id, key)));
    if (chosen.length === 0) continue;
    const marks = chosen.flatMap((passage) => passage.marks);
    const laid = await layMarks(house.authority, { part: stored.id, notes: facts.notes, marks, why: `Bowed as in ${looked.name}, who play the same here`, ink: false, asking: wish.asking, asker: wish.asker });
    brought.parts.push({ id: stored.id, name: stored.content.name, ...laid, marks: marks.length, left: 0 });
  }
  return brought;
}

import { leads } from '../../core/agreement/seating.ts';
import { offerOn } from '../../core/archive/offer.ts';
import type { KeptSet } from '../../core/archive/keptSet.ts';
import type { BroughtIn } from '../../core/archive/wire.ts';
import { partNow, type House, type PartNow } from '../operations/partNow.ts';
import type { StoredPart } from '../store/library.ts';
import type { Asker } from '../store/partLog.ts';
import { layMarks } from './layMarks.ts';

interface Wish {
  set: KeptSet;
  work: string;
  ink: boolean;
  asking: string;
  asker: Asker;
  librarian: boolean;
}

/** Where the marks come from, as a reason on every slip. */
const because = ({ ensemble, conductor, season }: KeptSet): string => `As played in ${season} under ${conductor} (${ensemble})`;

/** Lays the marks of an earlier season on every part of a work that has the same music; whoever leads some of its sections lays them on theirs. */
export async function bringIn(house: House, { set, work, ink, asking, asker, librarian }: Wish): Promise<BroughtIn> {
  const brought: BroughtIn = { parts: [] };
  const all: (PartNow & { part: StoredPart })[] = [];
  for (const part of await house.store.library.partsOf(work)) all.push({ part, ...(await partNow(house, part)) });
  const led = all.filter(({ section }) => leads(section, asker.person));
  for (const { part, facts } of led.length && (ink || !librarian) ? led : all) {
    const offer = offerOn(set.parts, part.content, facts);
    if (!offer) continue;
    const { marks, left } = offer;
    const laid = await layMarks(house.authority, { part: part.id, notes: facts.notes, marks, why: because(set), ink, asking, asker });
    brought.parts.push({ id: part.id, name: part.content.name, ...laid, marks: marks.length, left });
  }
  return brought;
}

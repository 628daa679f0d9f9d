import { inForce } from '../../core/agreement/inForce.ts';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import type { OtherPart } from '../beside/messages.ts';
import { getJson } from './http.ts';

function asItStands({ id, part, section, state }: PartView): OtherPart[] {
  if (part.instrument === null) return [];
  const seats = section?.seats.map(({ seat }) => seat) ?? [];
  return [{ id, section: part.name, part, seats, marks: inForce(state, seats), settings: section?.settings ?? {} }];
}

/** The other string parts of a work in score order, as they stand now. */
export async function otherParts({ id, work }: PartView): Promise<OtherPart[]> {
  const { programmes } = await getJson<Shelf>('/shelf');
  const found = programmes.flatMap(({ works }) => works).find((one) => one.id === work.id);
  const others = found?.parts.filter((part) => part.id !== id && part.instrument !== null) ?? [];
  const views = await Promise.all(others.map((part) => getJson<PartView>(`/parts/${part.id}`)));
  return views.flatMap(asItStands);
}

import { seatsOf } from '../../core/agreement/seating.ts';
import { inForce } from '../../core/agreement/inForce.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import type { OtherPart } from '../beside/messages.ts';
import { keptJson } from './kept/library.ts';
import { fetchPart } from './kept/parts.ts';

/** Another part as a rule or a reader sees it, with what stands in it now. */
export function asItStands({ id, part, section }: PartView, state: AgreementState): OtherPart {
  const seats = seatsOf(section);
  return { id, section: part.name, part, seats, marks: inForce(state, seats), settings: section?.settings ?? {} };
}

/** The other string parts of a work in score order. */
export async function fetchOthers({ id, work }: PartView): Promise<PartView[]> {
  const { programmes } = await keptJson<Shelf>('/shelf');
  const found = programmes.flatMap(({ works }) => works).find((one) => one.id === work.id);
  const others = found?.parts.filter((part) => part.id !== id && part.instrument !== null) ?? [];
  return Promise.all(others.map((part) => fetchPart(part.id)));
}

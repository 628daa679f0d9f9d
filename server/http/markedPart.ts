import { factsOf } from '../../core/agreement/facts.ts';
import { placeIn } from '../../core/agreement/seating.ts';
import type { AgreementState, PartFacts } from '../../core/agreement/state.ts';
import type { SectionView } from '../../core/agreement/wire/http.ts';
import type { Person } from '../store/people.ts';
import type { StoredPart } from '../store/library.ts';
import type { Deps } from './deps.ts';
import { notFound, trouble } from './trouble.ts';

export interface MarkedPart {
  part: StoredPart;
  section: SectionView | null;
  state: AgreementState;
  facts: PartFacts;
}

/** A part and what was agreed on it, for its principal or the librarian. */
export async function markedPart({ store, authority }: Deps, id: string, person: Person): Promise<MarkedPart> {
  const part = await store.library.part(id);
  if (!part) throw notFound('part');
  const section = await store.sections.ofPart(part.id);
  const leads = section !== null && placeIn(section, person.id)?.principal;
  if (!person.librarian && !leads) throw trouble(403, 'NOT_YOUR_EXPORT', 'Marked parts are given out by the librarian or the principal of the section. Ask one of them.');
  const { state } = (await authority.current(part.id))!;
  return { part, section, state, facts: factsOf(part.content, section?.seats.map(({ seat }) => seat) ?? []) };
}

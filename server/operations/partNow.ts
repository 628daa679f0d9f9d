import { factsOf } from '../../core/agreement/facts.ts';
import { seatsOf } from '../../core/agreement/seating.ts';
import type { AgreementState, PartFacts } from '../../core/agreement/state.ts';
import type { SectionView } from '../../core/agreement/wire/http.ts';
import type { StoredPart } from '../store/library.ts';
import type { Store } from '../store/store.ts';
import type { Authority } from './authority.ts';

export interface House {
  store: Store;
  authority: Authority;
}

export interface PartNow {
  /** As it sits in the part's programme. */
  section: SectionView | null;
  state: AgreementState;
  facts: PartFacts;
}

/** Who plays from a part and what is agreed on it now. */
export async function partNow({ store, authority }: House, part: StoredPart): Promise<PartNow> {
  const [section, current] = await Promise.all([store.sections.ofPart(part.id), authority.current(part.id)]);
  return { section, state: current!.state, facts: factsOf(part.content, seatsOf(section)) };
}

import type { SectionSettings, SectionView } from '../../core/agreement/wire/http.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { By } from './trail.ts';

export interface SeatingPlan {
  /** Front to back. */
  seats: { seat: SeatId; person: string | null }[];
  principal: string | null;
}

/** `by` is told in the trail with what was done. */
export interface Sections {
  /** null when the name is taken. */
  add(name: string, instrument: string, by?: By): Promise<SectionView | null>;
  all(): Promise<SectionView[]>;
  byId(id: string): Promise<SectionView | null>;
  /** Replaces desks and memberships at once. False when there is no such section or person; a deputy has no usual seat. */
  seat(section: string, plan: SeatingPlan, by?: By): Promise<boolean>;
  /** Who sits where in one programme; null: as usual again. False when there is no such programme, section or person. */
  seatFor(programme: string, section: string, plan: SeatingPlan | null, by?: By): Promise<boolean>;
  /** The section of a part as it sits in that part's programme; null when it is with no section. */
  ofPart(part: string): Promise<SectionView | null>;
  set(section: string, settings: SectionSettings, by?: By): Promise<boolean>;
  /** Ids of the parts that lie on its stands. */
  parts(section: string): Promise<string[]>;
}

/** Every seat once, every person in one seat. */
export function planFits(plan: SeatingPlan): boolean {
  const people = plan.seats.flatMap((place) => (place.person === null ? [] : [place.person]));
  return new Set(people).size === people.length && new Set(plan.seats.map((place) => place.seat)).size === plan.seats.length;
}

export interface Member {
  person: string;
  seat: SeatId | null;
  principal: boolean;
}

/** Who belongs to a section by its plan: everybody seated, and the principal even without a seat. */
export function membersOf({ seats, principal }: SeatingPlan): Member[] {
  const seated = seats.flatMap(({ seat, person }) => (person === null ? [] : [{ person, seat, principal: person === principal }]));
  return principal === null || seated.some((member) => member.principal) ? seated : [...seated, { person: principal, seat: null, principal: true }];
}

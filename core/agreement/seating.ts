import type { ProgrammeSeating } from './wire/programme.ts';
import type { SectionView } from './wire/http.ts';
import type { SeatId } from '../music/seat.ts';

/** What a person has in a section. */
export interface PlaceInSection {
  principal: boolean;
  /** null for a principal who has no seat. */
  seat: SeatId | null;
}

/**
 * A section as it sits in one programme: the programme's own plan where it has one, else as usual. Everything that asks who sits, plays, votes
 * or leads in a part asks here. Example: `seatedIn(section, programme.seatings).principal`.
 */
export function seatedIn(section: SectionView, seatings: readonly ProgrammeSeating[]): SectionView {
  const own = seatings.find((seating) => seating.section === section.id);
  return own ? { ...section, seats: own.seats, principal: own.principal } : section;
}

/** Where a person is in a section as it sits, or null where they have no part in it. Example: `placeIn(section, ada.id)?.seat` is "1o". */
export function placeIn(section: Pick<SectionView, 'seats' | 'principal'>, person: string): PlaceInSection | null {
  const seat = section.seats.find((place) => place.person?.id === person)?.seat ?? null;
  const principal = section.principal?.id === person;
  return seat !== null || principal ? { principal, seat } : null;
}

/** Whether a person is the principal of a section as it sits; of no section, nobody is. Example: `leads(section, ada.id)`. */
export function leads(section: Pick<SectionView, 'seats' | 'principal'> | null | undefined, person: string): boolean {
  return section?.principal?.id === person;
}

/** The seats of a section as it sits, front to back; none where there is no section. Example: `seatsOf(section)` is ["1o", "1i"]. */
export function seatsOf(section: Pick<SectionView, 'seats'> | null | undefined): SeatId[] {
  return section?.seats.map(({ seat }) => seat) ?? [];
}

/** Ids of the sections in which a person has a part in one programme. Example: `sectionsOf(shelf.sections, programme.seatings, ada.id)`. */
export function sectionsOf(sections: readonly SectionView[], seatings: readonly ProgrammeSeating[], person: string): string[] {
  return sections.filter((section) => placeIn(seatedIn(section, seatings), person)).map(({ id }) => id);
}

/**
 * Who sits in a programme and not in the section's usual seating (deputies), and who usually sits there and is away now; each by name, front
 * to back. Example: a plan with Jon in Mona's chair gives deputies [Jon] and away [Mona].
 */
export function changedSeating(usual: Pick<SectionView, 'seats' | 'principal'>, now: Pick<SectionView, 'seats' | 'principal'>): { deputies: Who[]; away: Who[] } {
  const missing = (from: typeof usual, other: typeof usual) => peopleIn(from).filter(({ id }) => !placeIn(other, id));
  return { deputies: missing(now, usual), away: missing(usual, now) };
}

type Who = { id: string; name: string };

/** Everybody of a section, front to back; a principal without a seat comes last. Example: `peopleIn(section).length`. */
export function peopleIn({ seats, principal }: Pick<SectionView, 'seats' | 'principal'>): Who[] {
  const seated = seats.flatMap(({ person }) => (person ? [person] : []));
  return principal && !seated.some(({ id }) => id === principal.id) ? [...seated, principal] : seated;
}

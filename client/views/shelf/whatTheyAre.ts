import type { Shelf } from '../../../core/agreement/wire/http.ts';
import type { SomebodyHere } from '../../library/people.ts';
import { words } from '../../words/words.ts';

/** What somebody is in the ensemble, in a few words: what they lead, where they sit, in which programmes they deputise. */
export function whatTheyAre({ id, librarian, deputy }: SomebodyHere, { sections, programmes }: Pick<Shelf, 'sections' | 'programmes'>): string {
  if (deputy) return words.people.deputiesIn(programmes.filter(({ seatings }) => seatings.some(({ seats, principal }) => principal?.id === id || seats.some(({ person }) => person?.id === id))).map(({ title }) => title));
  const led = sections.filter(({ principal }) => principal?.id === id);
  const seated = sections.filter((section) => !led.includes(section) && section.seats.some(({ person }) => person?.id === id));
  const names = (list: typeof sections) => list.map(({ name }) => name);
  const said = [librarian ? words.folder.library : '', led.length ? words.people.leads(names(led)) : '', seated.length ? words.people.sits(names(seated)) : ''].filter(Boolean);
  return said.join(', ') || words.people.member;
}

import type { Seats } from '../../../../core/music/seat.ts';
import { markName, type ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import type { Offer, Pair } from '../../../fingering/messages.ts';
import { handRange, type HandSetting } from './handShapes.ts';

/** Notes whose finger a player needs to read in this fingering. */
export const toldIn = ({ marks }: Pick<Offer, 'marks'>): Set<string> => new Set(marks.filter(({ value }) => value.kind === 'finger').map(({ note }) => note));

/** How the two pictures of the hand are drawn: on one scale, what differs ruled in both. */
export function settingsOf(above: Offer, below: Offer, { differs }: Pair): [HandSetting, HandSetting] {
  const range = handRange([...above.path, ...below.path]);
  const differ = new Set(differs);
  return [above, below].map((offer): HandSetting => ({ told: toldIn(offer), range, differs: differ })) as [HandSetting, HandSetting];
}

/** Marks of two fingerings about one staff: the first above, of the second below what the first does not say alike. */
export function bothMarks(shown: (offer: Offer, seats: Seats) => ShownMark[], above: Offer, below: Offer): ShownMark[] {
  const over = shown(above, 'all');
  const said = new Set(over.map(({ note, value }) => `${note} ${markName(value)}`));
  // Marks for an inside seat stand below the staff.
  return [...over, ...shown(below, ['1i']).filter(({ note, value }) => !said.has(`${note} ${markName(value)}`))];
}

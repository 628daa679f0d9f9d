import { partBowings, type BowingRequest, type PlainStroke } from '../../core/bowing/direction/partBowings.ts';
import { turned } from '../../core/bowing/strokes.ts';
import { seatMarks } from '../../core/check/seatMarks.ts';
import type { Part } from '../../core/music/part.ts';
import type { DrawnBow } from '../../core/sounding/sound.ts';
import type { HearQuestion } from './messages.ts';

/** Measures before a passage from which its first bow may come. */
const BEFORE = 4;

/** A split slur is two bows, each half as long. */
function drawn({ begins, ends, direction, split }: PlainStroke): DrawnBow[] {
  if (!split) return [{ begins, ends, direction }];
  const middle = (begins + ends) / 2;
  return [{ begins, ends: middle, direction }, { begins: middle, ends, direction: turned(direction) }];
}

type Setting = Pick<BowingRequest, 'instrument' | 'tempo' | 'table' | 'assumedDynamic'>;

/**
 * Who bows how in a passage of a part, in seconds of the part: one player with the bows of a seat, or every seat with its own. `first`: the passage's
 * first note, whose voice is bowed. Seats that see the same marks bow alike.
 */
export function seatBows(part: Part, { marks, seats, seat, who }: HearQuestion, measures: { from: number; to: number }, first: string, setting: Setting): { seat: string; bows: DrawnBow[] }[] {
  const { forAll, groups } = seatMarks(part, marks, seats);
  const bowsOf = (signsOn: BowingRequest['signsOn']): DrawnBow[] => {
    const bowings = partBowings({ part, ...setting, signsOn, measures: { from: Math.max(1, measures.from - BEFORE), to: measures.to }, best: 1 });
    const voice = bowings.find(({ strokes }) => strokes.some(({ notes }) => notes.includes(first))) ?? bowings[0];
    return (voice?.strokes ?? []).flatMap(drawn);
  };
  if (who === 'one' || seats.length === 0) return [{ seat: String(seat), bows: bowsOf(groups.find((group) => seat !== 'all' && group.seats.includes(seat))?.marksOn ?? forAll) }];
  const bySeat = new Map(groups.flatMap((group) => {
    const bows = bowsOf((note) => group.marksOn(note));
    return group.seats.map((one) => [one, bows] as const);
  }));
  return seats.map((one) => ({ seat: one, bows: bySeat.get(one) ?? [] }));
}

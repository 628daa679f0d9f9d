import type { MarkedPart } from '../../../../core/matching/carryBowing.ts';
import { figuresLike } from '../../../../core/matching/figure.ts';
import { selected } from '../../../tools/caret/reducer.ts';
import { words } from '../../../words/words.ts';
import { mayMark, type Desk } from '../desk.ts';
import { copyFor } from './copyFor.ts';

/** What stands in this part, as marks are copied from it. */
export const modelOf = (desk: Pick<Desk, 'view' | 'inForce' | 'pencil' | 'seats'>): MarkedPart => ({ part: desk.view.part, marks: [...desk.inForce, ...(desk.pencil.held === 'alone' ? desk.pencil.alone : [])], seats: desk.seats });

/** Looks where else the passage in hand is played, and hangs the places under it. */
export function askElsewhere(desk: Desk): void {
  if (desk.elsewhere.found) return desk.elsewhere.leave();
  if (desk.pencil.held !== 'alone' && !mayMark(desk)) return desk.say(words.stand.onlySection);
  if (desk.pencil.held !== 'alone' && desk.state.locked) return desk.say(words.stand.lifted);
  const notes = selected(desk.caret, desk.walk.ids);
  if (notes.length < 2) return desk.say(words.elsewhere.passageFirst);
  const marks = modelOf(desk).marks;
  if (!notes.some((note) => marks.some((mark) => mark.note === note))) return desk.say(words.elsewhere.nothingThere);
  const places = figuresLike(desk.view.part, notes);
  if (!places.length) return desk.say(words.elsewhere.nowhere);
  desk.elsewhere.show(notes[0]!, places);
}

/** Lays the marks of the figure at every place that was not left out: one step, taken back with one key. */
export function layElsewhere(desk: Desk): void {
  const { found } = desk.elsewhere;
  if (!found) return;
  const model = modelOf(desk);
  const chosen = found.places.filter((_, i) => !found.out.has(i));
  const copies = chosen.map((figure) => copyFor(model, figure));
  const marks = copies.flatMap((copy) => copy.marks);
  const behind = copies.reduce((sum, copy) => sum + copy.behind, 0);
  if (!chosen.length) return desk.say(words.elsewhere.noneChosen);
  if (marks.length) desk.write({ type: 'write', marks });
  desk.elsewhere.leave();
  desk.say([marks.length ? words.elsewhere.laid(marks.length, chosen.length) : words.elsewhere.already, behind ? words.elsewhere.behind(behind) : ''].filter(Boolean).join(' '));
}

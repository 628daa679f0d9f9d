import { LETTERS } from '../../../fingering/messages.ts';
import { words } from '../../../words/words.ts';
import { mayMark, type Desk } from '../desk.ts';
import { passageInHand } from '../passageInHand.ts';

/** Writes the marks of a fingering into the pencil, as if typed: to be changed, laid as a slip or rubbed out. */
export function takeOffer(desk: Desk, index = desk.offers.chosen): void {
  const offer = desk.offers.found?.offers[index];
  if (!offer) return;
  if (desk.pencil.held !== 'alone' && !mayMark(desk)) return desk.say(words.stand.onlySection);
  if (desk.pencil.held !== 'alone' && desk.state.locked) return desk.say(words.stand.lifted);
  desk.write({ type: 'write', marks: offer.marks });
  const { asked } = desk.offers;
  desk.offers.leave();
  // What was taken is in hand, so that it can be carried to the same figure at once.
  if (asked) {
    desk.move({ type: 'put', at: asked.from });
    desk.move({ type: 'put', at: asked.to, extend: true });
  }
  desk.say(words.offers.taken(LETTERS[index]!, offer.marks.length));
}

/** Measure under which the answer hangs: the one in hand while it is inside the passage, so that the picture follows from line to line. */
export function hangsUnder({ offers: { asked }, facts, caret }: Desk): number | null {
  if (!asked) return null;
  const here = facts.notes.get(caret.at ?? '') ?? asked.measure;
  const [from, to] = [facts.notes.get(asked.from) ?? asked.measure, facts.notes.get(asked.to) ?? asked.measure];
  return from <= here && here <= to ? here : asked.measure;
}

/** Asks for fingerings of the passage in hand, or of the measure where one note is. */
export function askOffers(desk: Desk): void {
  const passage = passageInHand(desk);
  if (!passage) return desk.say(words.stand.noNote);
  const { notes, whole, measure } = passage;
  desk.offers.ask({ from: notes[0]!, to: notes.at(-1)!, measure });
  // The passage is kept by the question; the rosin is free to walk its notes.
  if (!whole) desk.move({ type: 'put', at: notes[0]! });
  desk.move({ type: 'open', measure, slip: null });
}

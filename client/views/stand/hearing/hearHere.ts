import type { What } from '../../../hearing/reducer.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { passageInHand } from '../passageInHand.ts';

/** Starts the fingering in focus, or else the passage in hand as it is marked, for one player or the section with everybody's bows; stops what is heard. */
export function hearHere(desk: Desk, who: What['who']): void {
  const { hearing, offers } = desk;
  if (hearing.state !== 'ready') return hearing.stop();
  if (offers.asked) return hearing.hear({ from: offers.asked.from, to: offers.asked.to, offer: offers.found ? offers.chosen : null, who });
  const passage = passageInHand(desk);
  if (!passage) return desk.say(words.stand.noNote);
  desk.say(words.hearing.begun[who]);
  hearing.hear({ from: passage.notes[0]!, to: passage.notes.at(-1)!, offer: null, who });
}

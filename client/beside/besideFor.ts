import { hairFor } from '../bowing/hairFor.ts';
import { playedAnywhere } from '../../core/matching/anywhere.ts';
import { playedTogether } from '../../core/matching/together.ts';
import type { Part } from '../../core/music/part.ts';
import type { BesideAnswer, BesideQuestion, OtherBows } from './messages.ts';

/** Notes in a row that count as the same music. Chosen, not measured: a player asks here on purpose, so fewer than a rule would want. */
const LEAST = { unison: 3, rhythm: 6 };
/** Anywhere in a part, few notes are alike by chance. Chosen, not measured. */
const LEAST_AGAIN = { unison: 6, rhythm: 16 };

/** How the other sections bow, and where they play what this part plays. `onSoFar`: after each of them. */
export function besideFor(part: Part, { others }: BesideQuestion, onSoFar: (found: BesideAnswer) => void): BesideAnswer {
  const again = playedAnywhere(part, part, LEAST_AGAIN);
  const sections: OtherBows[] = [];
  for (const { id, section, part: other, marks, seats, settings } of others) {
    sections.push({ id, name: section, hair: hairFor(other, { marks, seats, settings, seat: 'all' }), same: playedTogether(other, part, LEAST) });
    onSoFar({ sections, again });
  }
  return { sections, again };
}

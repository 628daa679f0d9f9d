import type { ReactNode } from 'react';
import type { WorkView } from '../../../../core/agreement/wire/http.ts';
import type { OfferView } from '../../../../core/archive/wire.ts';
import { bringIn } from '../../../library/archive.ts';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import { broughtSentence } from './brought.ts';

/** Marks of an earlier season: laid as slips, or inked in at once by who leads. */
export function Offer({ work, offer, mayLay, mayInk, act, say }: { work: WorkView; offer: OfferView; mayLay: boolean; mayInk: boolean; act: Act; say(sentence: string): void }): ReactNode {
  const { id, season, conductor, ensemble, title, by, parts } = offer;
  const lay = (ink: boolean) => {
    say(words.reuse.working);
    void act(async () => broughtSentence(await bringIn(work.id, id, ink)));
  };
  return (
    <div className="offer" data-offer={id}>
      <p>
        <b>{words.reuse.offer(season, conductor)}</b> <span>{[ensemble, by === 'music' ? words.reuse.byMusic(title) : '', ...parts.map((part) => words.archive.part(part.section ?? part.name, part.marks))].filter(Boolean).join(' · ')}</span>
      </p>
      {mayLay ? (
        <p className="acts">
          <button type="button" onClick={() => lay(false)}>
            {words.reuse.asSlips}
          </button>
          {mayInk ? (
            <button type="button" onClick={() => lay(true)}>
              {words.reuse.asInk}
            </button>
          ) : null}
        </p>
      ) : null}
    </div>
  );
}

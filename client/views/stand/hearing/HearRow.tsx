import type { ReactNode } from 'react';
import { LETTERS } from '../../../fingering/messages.ts';
import { otherOf, PACES, type What } from '../../../hearing/reducer.ts';
import { capsOf } from '../../../tools/sheet/rows.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';

/** Hearing the fingering in focus: alone, by the section with everybody's bows, and the other one beside it. */
export function HearRow({ desk, index }: { desk: Desk; index: number }): ReactNode {
  const { hearing, offers, seats } = desk;
  const { asked } = offers;
  if (!asked) return null;
  const other = otherOf(hearing, index, offers.found?.offers.length ?? 0);
  const busy = hearing.state !== 'ready';
  const start = (offer: number, who: What['who']) => {
    offers.choose(offer);
    hearing.hear({ from: asked.from, to: asked.to, offer, who });
  };
  return (
    <div className="hearing" role="group" aria-label={words.hearing.title}>
      <p className="acts">
        <button type="button" onClick={() => (busy ? hearing.stop() : start(index, 'one'))}>
          {busy ? words.hearing.stop : words.hearing.hear} <kbd aria-hidden="true">{capsOf(['Space'])}</kbd>
        </button>
        {seats.length > 1 ? (
          <button type="button" onClick={() => start(index, 'section')}>
            {words.hearing.section} <kbd aria-hidden="true">{capsOf(['Shift+Space'])}</kbd>
          </button>
        ) : null}
        {other === null ? null : (
          <button type="button" onClick={() => start(other, hearing.what?.who ?? 'one')}>
            {words.hearing.other(LETTERS[other]!)}
          </button>
        )}
        <button type="button" aria-pressed={hearing.loop} onClick={hearing.turnLoop}>
          {words.hearing.loop}
        </button>
        <button type="button" aria-pressed={hearing.click} onClick={hearing.turnClick}>
          {words.hearing.click}
        </button>
        <span className="pace">
          <Choice label={words.hearing.pace} options={PACES.map((pace) => ({ value: String(pace), word: words.hearing.percent(pace) }))} value={String(hearing.pace)} onChoose={(pace) => hearing.setPace(Number(pace))} />
        </span>
      </p>
      <div role="status">
        {hearing.state === 'rendering' ? <p className="none">{words.hearing.working}</p> : null}
        {hearing.failed ? <p className="watch">{words.hearing.failed}</p> : null}
      </div>
    </div>
  );
}

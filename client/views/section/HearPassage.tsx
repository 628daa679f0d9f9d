import { useState, type ReactNode } from 'react';
import type { CheckInput } from '../../../core/check/finding.ts';
import type { Part } from '../../../core/music/part.ts';
import type { Passage } from '../../router.ts';
import { words } from '../../words/words.ts';
import { useHearing } from '../stand/hearing/useHearing.ts';

type Standing = Omit<CheckInput, 'part'>;

interface Props {
  part: Part;
  notes: Passage;
  standing: Standing;
  /** What would stand with the plan, where there is one. */
  planned: Standing | null;
  say(sentence: string): void;
}

/** The whole section on its passage: everybody's own changes as planned, and as they stand now, so that a hole in the line is heard. */
export function HearPassage({ part, notes, standing, planned, say }: Props): ReactNode {
  const [asItStands, setAsItStands] = useState(false);
  const { marks, seats, settings } = planned && !asItStands ? planned : standing;
  const hearing = useHearing(part, { marks, seats, seat: 'all', settings }, null, say);
  const start = (stands: boolean) => {
    setAsItStands(stands);
    hearing.hear({ from: notes.first, to: notes.last, offer: null, who: 'section' });
  };
  return (
    <div className="hearing" role="group" aria-label={words.hearing.title}>
      <p className="acts">
        <button type="button" onClick={() => start(planned === null)}>
          {planned ? words.hearing.planned : words.hearing.section}
        </button>
        {planned ? (
          <button type="button" onClick={() => start(true)}>
            {words.hearing.stands}
          </button>
        ) : null}
        {hearing.state === 'ready' ? null : (
          <button type="button" onClick={hearing.stop}>
            {words.hearing.stop}
          </button>
        )}
        <button type="button" aria-pressed={hearing.loop} onClick={hearing.turnLoop}>
          {words.hearing.loop}
        </button>
      </p>
      <p className="none" role="status">
        {hearing.state === 'rendering' ? words.hearing.preparing : ''}
      </p>
    </div>
  );
}

import type { ReactNode } from 'react';
import { useAway } from '../library/kept/useAway.ts';
import { useNewer } from '../offline/newer.ts';
import type { Place } from '../router.ts';
import { words } from '../words/words.ts';
import { Places } from './Places.tsx';

/** The lip of the stand: thread, places, the sentence that says where one is, and what lies on it. */
export function Ledge({ here, sentence, sub, hint, thread, line, moves, before, after, tools, className = '' }: { here: Place; sentence: ReactNode; sub?: ReactNode; hint?: ReactNode; thread?: ReactNode; line?: ReactNode; moves?: ReactNode; before?: ReactNode; after?: ReactNode; tools?: ReactNode; className?: string }): ReactNode {
  const newer = useNewer();
  const away = useAway();
  // The stand says itself what waits there.
  const second = away && here.at !== 'stand' ? words.anywhere.asOf : (sub ?? (newer ? words.anywhere.newer : hint));
  return (
    <footer className={`ledge ${thread ? 'threaded' : ''} ${className}`}>
      {thread}
      <div className="row">
        <Places here={here} />
        {line ?? null}
        <div className={line ? 'stage offstage' : 'stage'}>
          {line ? null : before}
          <div className="where" role="status" aria-live="polite" aria-atomic="true">
            <span>{sentence}</span>
            {second ? <em>{second}</em> : null}
          </div>
          {line ? null : after}
          {line ? null : moves}
        </div>
        {tools}
      </div>
    </footer>
  );
}

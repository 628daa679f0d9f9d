import type { ReactNode } from 'react';
import type { Place } from '../router.ts';
import { Places } from './Places.tsx';

/** The lip of the stand: thread, places, the sentence that says where one is, and what lies on it. */
export function Ledge({ here, sentence, sub, thread, line, moves, before, after, tools, className = '' }: { here: Place; sentence: ReactNode; sub?: ReactNode; thread?: ReactNode; line?: ReactNode; moves?: ReactNode; before?: ReactNode; after?: ReactNode; tools?: ReactNode; className?: string }): ReactNode {
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
            {sub ? <em>{sub}</em> : null}
          </div>
          {line ? null : after}
          {line ? null : moves}
        </div>
        {tools}
      </div>
    </footer>
  );
}

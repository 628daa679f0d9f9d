import { useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { measureHistory } from '../../../../core/agreement/measureHistory.ts';
import { usePartLog } from '../../../library/usePartLog.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { measureName, slipName } from '../sentence.ts';
import { PastPicture } from './PastPicture.tsx';
import { pastShapes } from './pastShapes.ts';

/** How the open measure came to be as it is, as a picture and as a list, from the part's log. */
export function PastView({ desk, measure }: { desk: Desk; measure: number }): ReactNode {
  const { confirmed } = desk.snapshot;
  const { value: log, fault, again } = usePartLog(desk.view.id, confirmed.seq);
  const [lit, setLit] = useState<number | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const moments = useMemo(() => (log ? measureHistory(log, measure) : []), [log, measure]);
  const come = log !== null;
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: 'start' });
  }, [come]);
  const shapes = useMemo(() => pastShapes(moments), [moments]);
  const name = (slip: string): string => {
    const found = confirmed.proposals[slip];
    return found ? slipName(desk, found) : '';
  };
  const title = words.past.title(measureName(desk, measure));
  return (
    <section className="past-view" aria-label={title}>
      <h3 ref={heading} tabIndex={-1}>
        {title}
      </h3>
      {fault ? (
        <p className="watch" role="status">
          {words.past.failed}{' '}
          <button type="button" onClick={again}>
            {words.past.again}
          </button>
        </p>
      ) : null}
      {!log && !fault ? <p className="none" role="status">{words.past.working}</p> : null}
      {log && !moments.length ? <p className="none">{words.past.none}</p> : null}
      {moments.length ? (
        <>
          <div className="past-scroll" role="group" aria-label={words.past.picture} tabIndex={0}>
            <PastPicture shapes={shapes} name={name} dayOf={(at) => words.day(at)} label={words.past.sum(shapes.lanes.filter(({ slip }) => slip !== null).length, moments.length)} lit={lit} onPoint={setLit} />
          </div>
          <ol>
            {moments.map(({ at, name: who, kind, slip, text }, i) => (
              <li key={i} className={lit === i ? 'lit' : undefined} onPointerEnter={() => setLit(i)} onPointerLeave={() => setLit(null)}>
                {i === 0 || words.day(at) !== words.day(moments[i - 1]!.at) ? <time dateTime={at}>{words.day(at)}</time> : null} <b>{who}</b> {words.past.kinds[kind](slip === null ? null : name(slip))}
                {text ? `: ${text}` : ''}
              </li>
            ))}
          </ol>
        </>
      ) : null}
      <button type="button" onClick={() => desk.setPast(null)}>
        {words.past.off} <kbd aria-hidden="true">q</kbd>
      </button>
    </section>
  );
}

import type { ReactNode } from 'react';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import type { SectionPlan } from './useSectionPlan.ts';
import { planSentences } from './planSentences.ts';

/** Broken rules said outright; more are folded away. */
const FIRST = 5;

/** What the plan says, what it cannot keep, and what can be done with it. */
export function PlanWords({ plan, name, mayTake, onTake, onLeave }: { plan: SectionPlan; name(ordinal: number): string; mayTake: boolean; onTake(): void; onLeave(): void }): ReactNode {
  if (plan.state === 'resting') return null;
  const said = plan.planned ? planSentences(plan.planned, name, plan.state === 'found') : null;
  return (
    <section className="plan-words" aria-label={words.plan.title}>
      <h2>{words.plan.title}</h2>
      <div role="status">
        {plan.state === 'working' ? <p>{plan.planned ? words.plan.better : words.plan.working(plan.players)}</p> : null}
        {plan.state === 'failed' ? <p className="watch">{words.plan.failed}</p> : null}
        {plan.refusal ? <p className="watch">{plan.refusal}</p> : null}
        {said ? <p className={said.broken.length ? 'watch' : undefined}>{said.lead}</p> : null}
      </div>
      {said?.broken.length ? (
        <ul>
          {said.broken.slice(0, FIRST).map((sentence, i) => (
            <li key={i}>{sentence}</li>
          ))}
        </ul>
      ) : null}
      {said && said.broken.length > FIRST ? (
        <Fold word={words.plan.more(said.broken.length - FIRST)}>
          <ul>
            {said.broken.slice(FIRST).map((sentence, i) => (
              <li key={i}>{sentence}</li>
            ))}
          </ul>
        </Fold>
      ) : null}
      {said?.advice ? <p className="watch">{said.advice}</p> : null}
      <p className="mend">
        {mayTake ? (
          <button type="button" onClick={onTake}>
            {words.plan.take} <kbd aria-hidden="true">Enter</kbd>
          </button>
        ) : null}
        <button type="button" onClick={onLeave}>
          {words.line.leave} <kbd aria-hidden="true">Esc</kbd>
        </button>
      </p>
    </section>
  );
}

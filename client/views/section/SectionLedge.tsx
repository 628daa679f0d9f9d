import type { ReactNode } from 'react';
import { seatWords } from '../../../core/music/markWords.ts';
import type { Place } from '../../router.ts';
import { Ledge } from '../../ui/Ledge.tsx';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import type { Change } from './lanes.ts';
import type { SectionPlan } from './useSectionPlan.ts';

interface Props {
  place: Place;
  work: string;
  /** The measures of the passage shown; empty where none is. */
  where: string;
  said: string | null;
  /** Whether it is known which passages are staggered. */
  drawn: boolean;
  /** The change the rosin stands at. */
  change: Change | undefined;
  measure(ordinal: number): string;
  plan: SectionPlan;
  /** Its marks may go into this player's pencil. */
  mayTake: boolean;
  /** There is another passage to turn to. */
  more: boolean;
  onNext(): void;
  onPlan(): void;
  onTake(): void;
  onStand(): void;
}

function sentence({ where, work, drawn, change, measure, plan }: Props): string {
  if (!drawn) return words.partComes;
  if (change) {
    const at = measure(change.bow.begins.measure);
    return words.section.change(seatWords([change.seat], words.marks), words.inMeasures(at, at), change.bow.direction === 'down' ? words.section.toFrog : words.section.toPoint);
  }
  if (plan.planned && where) return words.plan.planned(work, where);
  return where ? words.section.staggered(work, where) : words.section.none;
}

/** The ledge of the section: where the rosin stands, and what can be done with the passage. */
export function SectionLedge(props: Props): ReactNode {
  const { place, where, said, drawn, plan, mayTake, more, onNext, onPlan, onTake, onStand } = props;
  const sub = where ? (plan.planned ? words.plan.sub(mayTake) : words.section.sub) : drawn ? words.section.noneSub : null;
  return (
    <Ledge
      here={place}
      sentence={<b>{said ?? sentence(props)}</b>}
      sub={sub}
      tools={
        <div className="word-row">
          {more ? <LedgeWord word={words.section.next} cap="n" onPress={onNext} /> : null}
          {where ? <LedgeWord word={words.plan.again} cap="p" onPress={onPlan} /> : null}
          {mayTake ? <LedgeWord word={words.plan.take} cap="Enter" onPress={onTake} on /> : <LedgeWord word={words.section.onStand} cap="Enter" onPress={onStand} />}
        </div>
      }
    />
  );
}

import type { FormEvent, ReactNode } from 'react';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import type { SeatId } from '../../../core/music/seat.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import { findMeasure, type PartIndex } from '../../library/partIndex.ts';
import type { Passage } from '../../router.ts';
import { Tick } from '../../ui/Tick.tsx';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';

interface Props {
  section: SectionView;
  index: PartIndex;
  /** Ordinals that stand in the form at first. */
  from: number;
  to: number;
  absent: readonly SeatId[];
  onAbsent(absent: readonly SeatId[]): void;
  onPlan(passage: Passage): void;
  say(sentence: string): void;
}

/** The notes between two measures that can carry marks, both included; null where there are none. */
export function passageBetween({ walk, notes }: PartIndex, from: number, to: number): Passage | null {
  const inside = walk.filter((id) => {
    const { ordinal } = notes.get(id)!.measure;
    return ordinal >= from && ordinal <= to;
  });
  return inside.length ? { first: inside[0]!, last: inside.at(-1)! } : null;
}

/** Which measures are to be shared out, and who is there to share them. */
export function PlanForm({ section, index, from, to, absent, onAbsent, onPlan, say }: Props): ReactNode {
  const printed = (ordinal: number) => numberOf(index.part.measures[ordinal - 1]!);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    const ends = ['from', 'to'].map((name) => String(said.get(name)));
    const [first, last] = ends.map((end) => findMeasure(index, end));
    const missing = first === null ? ends[0]! : last === null ? ends[1]! : null;
    if (missing !== null) return say(words.stand.measureGone(missing));
    const passage = passageBetween(index, Math.min(first!, last!), Math.max(first!, last!));
    if (passage) onPlan(passage);
    else say(words.plan.noNotes);
  };
  const turn = (seat: SeatId, here: boolean) => onAbsent(here ? absent.filter((other) => other !== seat) : [...absent, seat]);
  return (
    <Fold className="folded rows plan-form" word={words.plan.form}>
      <p>{words.plan.what}</p>
      <form onSubmit={onSubmit} key={`${from} ${to}`}>
        <p className="between">
          <label>
            {words.plan.from} <input type="text" name="from" inputMode="numeric" size={4} required defaultValue={printed(from)} />
          </label>
          <label>
            {words.plan.to} <input type="text" name="to" inputMode="numeric" size={4} required defaultValue={printed(to)} />
          </label>
          <button type="submit">{words.plan.ask}</button>
        </p>
      </form>
      <fieldset>
        <legend>{words.plan.who}</legend>
        <div className="by-seat">
          {section.seats.map(({ seat, person }) => (
            <Tick key={seat} checked={!absent.includes(seat)} onTurn={(here) => turn(seat, here)}>
              {person?.name ?? words.seat.one(seat)}
            </Tick>
          ))}
        </div>
      </fieldset>
    </Fold>
  );
}

import { useState, type ReactNode } from 'react';
import { movingDesks, rotated } from '../../../../core/agreement/rotation.ts';
import type { SectionView, Shelf } from '../../../../core/agreement/wire/http.ts';
import { deskOf } from '../../../../core/music/seat.ts';
import { seatAsUsual, seatForProgramme } from '../../../library/shelf.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import { Seating } from '../../shelf/Seating.tsx';
import { planOf, resized, type Plan } from '../../shelf/seatingPlan.ts';

/** As many chairs as a plan may have; an odd number leaves a single one at the last desk. */
const SIZES = Array.from({ length: 24 }, (_, i) => ({ value: String(i + 1), word: String(i + 1) }));

interface Props {
  programme: string;
  /** As it sits in the programme. */
  section: SectionView;
  /** Sits otherwise than usual. */
  own: boolean;
  people: Shelf['people'];
  act: Act;
}

/** A section's seating for one programme: chairs, players, the desks that move back, and back to how it usually sits. */
export function OwnSeating({ programme, section, own, people, act }: Props): ReactNode {
  const { season } = words;
  const plan = planOf(section);
  const desks = [...new Set(plan.map(({ seat }) => deskOf(seat)))];
  const [from, setFrom] = useState(2);
  const [to, setTo] = useState<number | null>(null);
  const end = to ?? desks.at(-1) ?? 1;
  const keep = (next: Plan, principal: string | null, said: string | null = null) =>
    void act(async () => {
      await seatForProgramme(programme, section.id, next, principal);
      return said;
    });
  const lead = section.principal?.id ?? null;
  const leadIn = (next: Plan) => (next.some(({ person }) => person === lead) ? lead : null);
  const moving = movingDesks(plan, from, end);
  const moveBack = () => (moving.length < 2 ? void act(async () => season.nothingMoves) : keep(rotated(plan, from, end), lead, season.movedBack(moving.length)));
  const choices = desks.map((desk) => ({ value: String(desk), word: String(desk) }));
  return (
    <>
      <p className="quiet">{season.seatingWhat}</p>
      <p className="chosen-line">
        <Choice label={season.chairs} options={SIZES} value={String(plan.length)} onChoose={(chairs) => keep(resized(plan, Number(chairs)), leadIn(resized(plan, Number(chairs))))} />
      </p>
      <Seating section={section} people={people} onKeep={(next, principal) => keep(next, principal)} />
      <div className="rotation">
        <Choice label={season.fromDesk} options={choices} value={String(from)} onChoose={(desk) => setFrom(Number(desk))} />
        <Choice label={season.toDesk} options={choices} value={String(end)} onChoose={(desk) => setTo(Number(desk))} />
        <button type="button" onClick={moveBack}>
          {season.moveBack}
        </button>
        {own ? (
          <button type="button" onClick={() => void act(async () => void (await seatAsUsual(programme, section.id)))}>
            {season.sitAsUsual}
          </button>
        ) : null}
      </div>
    </>
  );
}

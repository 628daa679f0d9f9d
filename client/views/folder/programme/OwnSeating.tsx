import type { ReactNode } from 'react';
import type { SectionView, Shelf } from '../../../../core/agreement/wire/http.ts';
import { seatAsUsual, seatForProgramme } from '../../../library/shelf.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import { Seating } from '../../shelf/Seating.tsx';
import { planOf, resized, type Plan } from '../../shelf/seatingPlan.ts';
import { Rotation } from './Rotation.tsx';

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
  const lead = section.principal?.id ?? null;
  const keep = (next: Plan, principal: string | null, said: string | null = null) =>
    void act(async () => {
      await seatForProgramme(programme, section.id, next, next.some(({ person }) => person === principal) ? principal : null);
      return said;
    });
  return (
    <>
      <p className="quiet">{season.seatingWhat}</p>
      <p className="chosen-line">
        <Choice label={season.chairs} options={SIZES} value={String(plan.length)} onChoose={(chairs) => keep(resized(plan, Number(chairs)), lead)} />
      </p>
      <Seating section={section} people={people} onKeep={keep} />
      <Rotation plan={plan} onMove={(next, said) => keep(next, lead, said)} onNone={() => void act(async () => season.nothingMoves)} />
      {own ? (
        <p className="more">
          <button type="button" onClick={() => void act(async () => void (await seatAsUsual(programme, section.id)))}>
            {season.sitAsUsual}
          </button>
        </p>
      ) : null}
    </>
  );
}

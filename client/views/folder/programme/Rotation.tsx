import { useState, type ReactNode } from 'react';
import { movingDesks, rotated } from '../../../../core/agreement/rotation.ts';
import { deskOf } from '../../../../core/music/seat.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { words } from '../../../words/words.ts';
import type { Plan } from '../../shelf/seatingPlan.ts';

interface Props {
  plan: Plan;
  onMove(next: Plan, said: string): void;
  /** The row has no two desks that could change places. */
  onNone(): void;
}

/** A row of desks moves back by one, the last to its front: at first all desks behind the first. */
export function Rotation({ plan, onMove, onNone }: Props): ReactNode {
  const { season } = words;
  const [row, setRow] = useState<{ from: number; to: number | null }>({ from: 2, to: null });
  const desks = [...new Set(plan.map(({ seat }) => deskOf(seat)))];
  const last = desks.at(-1) ?? 0;
  if (last < 2) return null;
  const from = Math.min(row.from, last);
  const to = Math.min(row.to ?? last, last);
  const moving = movingDesks(plan, from, to).length;
  const choices = desks.map((desk) => ({ value: String(desk), word: String(desk) }));
  return (
    <div className="rotation">
      <Choice label={season.fromDesk} options={choices} value={String(from)} onChoose={(desk) => setRow({ ...row, from: Number(desk) })} />
      <Choice label={season.toDesk} options={choices} value={String(to)} onChoose={(desk) => setRow({ ...row, to: Number(desk) })} />
      <button type="button" onClick={() => (moving < 2 ? onNone() : onMove(rotated(plan, from, to), season.movedBack(moving)))}>
        {season.moveBack}
      </button>
    </div>
  );
}

import type { ReactNode } from 'react';
import { words } from '../../../words/words.ts';
import type { DraftDay } from './form.ts';

interface Props {
  day: DraftDay;
  /** Which of its kind, from 1. */
  n: number;
  onChange(change: Partial<DraftDay>): void;
  onLeaveOut(): void;
}

/** One rehearsal or concert: its day, and the time and place where known. */
export function DayRow({ day, n, onChange, onLeaveOut }: Props): ReactNode {
  const { season } = words;
  const name = season.which(season.kinds[day.kind], n);
  return (
    <li>
      <b>{name}</b>
      <input type="date" aria-label={`${name}, ${season.date}`} value={day.date} onChange={({ target }) => onChange({ date: target.value })} />
      <input type="time" aria-label={`${name}, ${season.time}`} value={day.time ?? ''} onChange={({ target }) => onChange({ time: target.value || null })} />
      <input aria-label={`${name}, ${season.place}`} placeholder={season.place} maxLength={120} value={day.words} onChange={({ target }) => onChange({ words: target.value })} />
      <button type="button" aria-label={`${name}: ${season.leaveOut}`} onClick={onLeaveOut}>
        {season.leaveOut}
      </button>
    </li>
  );
}

import { useEffect } from 'react';
import { deskOf } from '../../../core/music/seat.ts';
import { keepsKeys } from '../../ui/keepsKeys.ts';
import type { Change } from './lanes.ts';

type Here = { second: number; desk: number };

/** The next change in a direction: along the desk's lane, or the nearest in time at another desk. */
export function stepChange(changes: readonly Change[], here: Here | null, key: string): Here | null {
  const at = (change: Change | undefined): Here | null => (change ? { second: change.second, desk: deskOf(change.seat) } : null);
  if (!here) return at(changes[0]);
  if (key === 'ArrowLeft' || key === 'ArrowRight') {
    const lane = changes.filter(({ seat }) => deskOf(seat) === here.desk);
    return at(key === 'ArrowRight' ? lane.find(({ second }) => second > here.second + 0.001) : lane.findLast(({ second }) => second < here.second - 0.001)) ?? here;
  }
  const desks = [...new Set(changes.map(({ seat }) => deskOf(seat)))].sort((a, b) => a - b);
  const desk = desks[desks.indexOf(here.desk) + (key === 'ArrowDown' ? 1 : -1)];
  if (desk === undefined) return here;
  const lane = changes.filter(({ seat }) => deskOf(seat) === desk);
  return at(lane.reduce((best, one) => (Math.abs(one.second - here.second) < Math.abs(best.second - here.second) ? one : best)));
}

/** Arrows walk the changes; other keys do what `acts` says, by their names. */
export function useChangeKeys(changes: readonly Change[], here: Here | null, onHere: (here: Here | null) => void, acts: Readonly<Record<string, () => void>>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement;
      if (event.altKey || event.ctrlKey || event.metaKey || keepsKeys(event)) return;
      if (event.key.startsWith('Arrow')) {
        onHere(stepChange(changes, here, event.key));
        event.preventDefault();
      } else if (event.key !== 'Enter' || !target.closest('button, a')) acts[event.key]?.();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
}

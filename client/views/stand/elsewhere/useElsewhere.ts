import { useState } from 'react';
import type { Figure } from '../../../../core/matching/figure.ts';

/** A figure whose marks are to be copied, and where it is played again. */
export interface Elsewhere {
  /** First note of the figure: the list hangs under its line. */
  first: string;
  places: readonly Figure[];
  /** Places that were left out. */
  out: ReadonlySet<number>;
}

export interface ElsewhereOnStand {
  found: Elsewhere | null;
  show(first: string, places: readonly Figure[]): void;
  turn(place: number): void;
  leave(): void;
}

export function useElsewhere(): ElsewhereOnStand {
  const [found, setFound] = useState<Elsewhere | null>(null);
  return {
    found,
    show: (first, places) => setFound({ first, places, out: new Set() }),
    turn: (place) => setFound((now) => now && { ...now, out: new Set(now.out.has(place) ? [...now.out].filter((one) => one !== place) : [...now.out, place]) }),
    leave: () => setFound(null),
  };
}

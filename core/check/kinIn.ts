import type { PartMusic } from './context.ts';
import { repeatedRuns } from './repeatedRuns.ts';
import type { Kin } from './rule.ts';

/** Passages of at least `least` notes that come again in their voice. Example: see rules/fingering/same-music.ts. */
export function kinIn({ voices }: PartMusic, least: number): Kin[] {
  return voices.flatMap((voice) =>
    repeatedRuns(voice, least).map(({ first, second, length, between }): Kin => {
      const pairs = Array.from({ length }, (_, i) => ({
        models: [voice[first + i]!, ...between.filter((other) => i < other.length).map((other) => voice[other.first + i]!)],
        again: voice[second + i]!,
      }));
      const measures = [...new Set(pairs.flatMap(({ models, again }) => [...models, again].map(({ measure }) => measure)))].sort((a, b) => a - b);
      return { name: `${voice[first]!.head.id}=${voice[second]!.head.id}`, measures, pairs };
    }),
  );
}

import type { PartMusic } from './context.ts';
import { repeatedRuns } from './repeatedRuns.ts';
import type { Kin } from './rule.ts';

/** Passages of at least `least` notes that come again in their voice. Example: see rules/fingering/same-music.ts. */
export function kinIn({ voices }: PartMusic, least: number): Kin[] {
  return voices.flatMap((voice) =>
    repeatedRuns(voice, least).map(({ first, second, length }): Kin => {
      const pairs = Array.from({ length }, (_, i) => ({ model: voice[first + i]!, again: voice[second + i]! }));
      const measures = [...new Set(pairs.flatMap(({ model, again }) => [model.measure, again.measure]))].sort((a, b) => a - b);
      return { name: `${pairs[0]!.model.head.id}=${pairs[0]!.again.head.id}`, measures, pairs };
    }),
  );
}

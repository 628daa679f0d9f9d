import type { Direction, Stroke } from '../strokes.ts';
import type { StrokeFacts } from './facts.ts';

/** Ticks in a quarter: fine enough for any printed length, coarse enough that thirds of a beat meet. */
const TICKS = 960;

/** Where the first sounding note under a bow begins and ends; null where the bow begins inside a note. */
function placeOf({ begins, pieces }: Stroke): string | null {
  const first = pieces.find(({ event }) => !event.head.grace)?.event;
  return first && !begins.inside ? `${Math.round(first.from * TICKS)}/${Math.round(first.to * TICKS)}` : null;
}

export interface VoicesTogether {
  /** The bow goes this way, and so do bows of other voices that begin with it on a note of the same length. The first that is told holds. */
  tell(stroke: Stroke, direction: Direction | null): void;
  /** The same bow with the way other voices give it, unless it has a sign of its own. */
  follow(facts: StrokeFacts): StrokeFacts;
}

/**
 * Keeps voices of one part together: whoever plays two of them has one bow, and in the same rhythm they are meant as one sound. Source: common practice, no source.
 * Example: told a down-bow on a quarter of the upper voice, a bow that begins with a quarter below it follows down.
 */
export function voicesTogether(): VoicesTogether {
  const ways = new Map<string, Direction>();
  return {
    tell(stroke, direction) {
      const place = placeOf(stroke);
      if (place !== null && direction !== null && !ways.has(place)) ways.set(place, direction);
    },
    follow(facts) {
      const place = facts.stroke.direction === null ? placeOf(facts.stroke) : null;
      const way = place === null ? undefined : ways.get(place);
      return way ? { ...facts, together: way } : facts;
    },
  };
}

import type { StrokeFacts } from '../../../core/bowing/direction/facts.ts';
import type { Direction } from '../../../core/bowing/strokes.ts';

/** Bows in order, with the direction the print or the performer gives, null where neither does. */
export interface BowLine {
  piece: string;
  facts: StrokeFacts[];
  given: (Direction | null)[];
}

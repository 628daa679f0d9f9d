import { z } from 'zod';
import { KeptUnder, type KeptSetView } from './keptSet.ts';

/** POST /api/works/:work/keep */
export const KeepBody = KeptUnder;

/** GET /api/works/:work/offers: sets of earlier seasons that fit the work, by its heading or by its music (share of measures that stand in both, 0 to 1), best first. */
export interface OfferView extends KeptSetView {
  by: 'heading' | 'music';
  share: number;
}

/** POST /api/works/:work/bring-in: `id` is chosen by whoever asks, so that asking again lays nothing twice. `ink`: inked in at once, where I lead the section. */
export const BringInBody = z.strictObject({ id: z.uuid(), set: z.uuid(), ink: z.boolean().default(false) });

/** What came of it, part by part. */
export interface BroughtIn {
  parts: {
    id: string;
    name: string;
    /** Slips laid, and of those inked in. */
    slips: number;
    inked: number;
    /** Marks brought, and marks whose music or seat is not here. */
    marks: number;
    left: number;
    /** Why the part took no more; null where it took all. */
    refusal: string | null;
  }[];
}

/** POST /api/archive */
export interface TakenIn {
  added: number;
  /** Sets that were there already. */
  known: number;
}

/** GET /api/works/:work/travel?from=PART: where other parts play what the part plays, and the bows that would be new there. */
export interface TravelView {
  passages: {
    /** Names the passage when it is chosen. */
    key: string;
    part: string;
    name: string;
    section: string | null;
    likeness: 'unison' | 'rhythm';
    from: number;
    to: number;
    /** Printed numbers of its first and last measure. */
    numbers: [string, string];
    marks: number;
  }[];
}

/** POST /api/works/:work/travel */
export const TravelBody = z.strictObject({ id: z.uuid(), from: z.string().max(64), keys: z.array(z.string().max(80)).min(1).max(500) });

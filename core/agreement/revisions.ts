import type { LogEntry } from './event.ts';
import { laidOverAfter } from './laidOverAfter.ts';
import { measureNow } from './layOver.ts';
import type { AgreementState, Stage, StandingMark } from './state.ts';

export type RevisionKind = 'inked' | 'restored' | 'stage' | 'edition';

/** A place in a part's log that is worth going back to. */
export interface Revision {
  /** The state after so many rows. */
  seq: number;
  kind: RevisionKind;
  /** ISO 8601, UTC. */
  at: string;
  by: string;
  name: string;
  /** The sentence that came with it; empty where there was none. */
  why: string;
  /** Ordinals of the measures whose ink changed, as they are after every edition laid over since; in order, each once. */
  measures: number[];
  /** The stage that was reached, for kind `stage`. */
  stage: Stage | null;
}

const inOrder = (measures: readonly number[]): number[] => [...new Set(measures)].sort((a, b) => a - b);

/**
 * The revisions of a part worth a name, in the log's order: each time ink changed, each stage moved to, each corrected edition laid over. Slips, votes and talk are in the measures' history.
 * Never throws.
 * Example: a slip laid, adopted and the part moved on to "printed" are two revisions, at seq 2 and 3.
 */
export function revisionsOf(entries: readonly LogEntry[]): Revision[] {
  const later = laidOverAfter(entries);
  return entries.flatMap(({ seq, at, by, byName, events }, index) =>
    events.flatMap((event): Revision[] => {
      const said = { seq, at, by, name: byName };
      const now = (ordinal: number): number => later[index]!.reduce((there, measures) => measureNow(measures, there), ordinal);
      switch (event.type) {
        case 'adopted':
          return [{ ...said, kind: 'inked', why: event.why, measures: inOrder(event.measures.map(now)), stage: null }];
        case 'restored':
          return [{ ...said, kind: 'restored', why: event.why, measures: inOrder([...event.back, ...event.aside].map(({ measure }) => now(measure))), stage: null }];
        case 'movedOn':
          return [{ ...said, kind: 'stage', why: '', measures: [], stage: event.stage }];
        case 'laidOver':
          return [{ ...said, kind: 'edition', why: '', measures: [], stage: null }];
        default:
          return [];
      }
    }),
  );
}

/** A place in the list of everything ever inked in. */
export interface InkPlace {
  ink: number;
  one: StandingMark;
}

/**
 * What stood after `seq` rows, from the state alone: ink is never lost, and says when it came and when it was replaced. In the order of inking, with its places.
 * Invariant: the marks are those of `replay(log.slice(0, seq))` that are not superseded there.
 * Example: `inkAt(state, state.seq)` is what stands now.
 */
export function inkAt(state: AgreementState, seq: number): InkPlace[] {
  return state.ink.flatMap((one, ink) => (one.inked.seq <= seq && (one.superseded === null || one.superseded.seq > seq) ? [{ ink, one }] : []));
}

/**
 * A state with the ink that stood after `seq` rows and nothing laid over it, for `inForce` and `marksFor`; everything else is as in `state`.
 * Example: `inForce(stoodAt(state, handedOut.seq), seats)` is what stands on the parts handed out.
 */
export function stoodAt(state: AgreementState, seq: number): AgreementState {
  return { ...state, ink: inkAt(state, seq).map(({ one }) => ({ ...one, superseded: null })) };
}

import type { InkChange } from '../difference.ts';
import type { MarkInForce } from '../inForce.ts';
import type { Revision } from '../revisions.ts';

/** GET /api/parts/:part/revisions: in the order of the log. */
export interface RevisionsView {
  head: number;
  revisions: Revision[];
}

/** GET /api/parts/:part/revisions/:seq */
export interface RevisionView {
  seq: number;
  /** What stood then, with the seats it held for. */
  marks: MarkInForce[];
}

/** GET /api/parts/:part/difference?from=&to= */
export interface DifferenceView {
  from: number;
  to: number;
  changes: InkChange[];
}

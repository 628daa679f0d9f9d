import type { InkChange } from '../../../core/agreement/difference.ts';
import type { SystemRange } from '../../../core/engraving/systemRanges.ts';

/** Neighbouring measures of one line of the part in which something differs. */
export interface Snippet {
  /** Index of the line. */
  system: number;
  from: number;
  to: number;
  changes: InkChange[];
}

/** Changes put together as they are looked at: measures next to each other on one line are one snippet. In the order of the music. */
export function snippetsOf(changes: readonly InkChange[], systems: readonly Pick<SystemRange, 'first' | 'last'>[]): Snippet[] {
  const found: Snippet[] = [];
  for (const change of changes) {
    const system = systems.findIndex(({ first, last }) => first <= change.measure && change.measure <= last);
    if (system < 0) continue;
    const before = found.at(-1);
    if (before?.system === system && change.measure - before.to <= 1) {
      before.to = change.measure;
      before.changes.push(change);
    } else found.push({ system, from: change.measure, to: change.measure, changes: [change] });
  }
  return found;
}

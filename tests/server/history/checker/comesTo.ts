import { replay } from '../../../../core/agreement/replay.ts';
import type { Of } from '../record/happened.ts';
import { print } from '../record/record.ts';

/** What rows come to by the house's own replay, as a short text; of a broken log it says so, which equals no state. */
export function comesTo(rows: Of<'log'>['rows']): string {
  try {
    return print(replay(rows.map(({ ensemble: _, ...row }) => row)));
  } catch (reason) {
    return `cannot be replayed: ${(reason as Error).message}`;
  }
}

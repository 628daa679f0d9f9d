import type { z } from 'zod';
import { withFingerings } from '../../../core/print/fingerings.ts';
import type { Refused } from '../../jobs/requests.ts';
import type { PrintForm, Printed } from '../../print/order.ts';
import type { Deps } from '../deps.ts';
import type { OrderedCopy, PrintsAsked } from './copyOf.ts';

/** What became of a copy. */
export type Made = Pick<Printed, 'ok' | 'files' | 'turns' | 'warnings'> | Refused;

interface Form {
  /** Ending of its files. */
  suffix: string;
  make(deps: Deps, order: OrderedCopy, signal: AbortSignal): Promise<Made>;
}

const laidOut = (form: PrintForm): Form => ({ suffix: `.${form}`, make: (deps, order, signal) => deps.documents.printPart({ ...order, form }, { signal }) });

/** The file the part came in, with the marks put into it. */
const merged = (form: 'musicxml' | 'mxl'): Form => ({
  suffix: `.${form}`,
  async make(deps, { bytes, fileName, part, stored, marks, fingerings }, signal) {
    const made = await deps.documents.markDocument({ bytes, fileName, part, ids: stored, marks: withFingerings(stored, marks, fingerings), form, superseded: 'hide' }, { signal });
    return made.ok ? { ok: true, files: [made], turns: [], warnings: [] } : made;
  },
});

/** How a copy of each form is made. */
export const FORMS: Record<z.infer<typeof PrintsAsked>['form'], Form> = { pdf: laidOut('pdf'), svg: laidOut('svg'), mei: laidOut('mei'), musicxml: merged('musicxml'), mxl: merged('mxl') };

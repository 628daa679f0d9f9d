import type { z } from 'zod';
import type { Reader } from '../../../core/print/copy.ts';
import type { Deps } from '../deps.ts';
import type { MarkedPart } from '../markedPart.ts';
import { copyOf, type PrintsAsked } from './copyOf.ts';
import type { Copy } from './packCopies.ts';

/** One of many copies: as pages, or as the file the part came in with the marks put into it. */
export async function copyFor(deps: Deps, marked: MarkedPart, reader: Reader, asked: z.infer<typeof PrintsAsked>, signal: AbortSignal): Promise<Copy> {
  const { form } = asked;
  const { order, name } = await copyOf(deps, marked, reader, { ...asked, form: form === 'musicxml' || form === 'mxl' ? 'pdf' : form });
  if (form !== 'musicxml' && form !== 'mxl') return { name, make: () => deps.documents.printPart(order, { signal }) };
  const { bytes, fileName, part, stored, marks } = order;
  return {
    name,
    make: async () => {
      const made = await deps.documents.markDocument({ bytes, fileName, part, ids: stored, marks, form, superseded: 'hide' });
      return made.ok ? { ok: true, files: [made], turns: [], warnings: [] } : made;
    },
  };
}

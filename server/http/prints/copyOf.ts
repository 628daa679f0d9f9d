import { z } from 'zod';
import type { PartFacts, Stamp } from '../../../core/agreement/state.ts';
import { CopyMarks, marksOnCopy, Reader, readersOf, readerWords } from '../../../core/print/copy.ts';
import { Fingerings } from '../../../core/print/fingerings.ts';
import { MarginsName } from '../../../core/print/margins.ts';
import { PaperName, STAFF } from '../../../core/print/paper.ts';
import type { PrintOrder } from '../../print/order.ts';
import type { InHall } from '../deps.ts';
import type { MarkedPart } from '../markedPart.ts';
import { trouble } from '../trouble.ts';

const LOOK = { marks: CopyMarks.default('agreed'), paper: PaperName.default('a4'), margins: MarginsName.default('usual'), staff: z.coerce.number().default(STAFF.usual), fingerings: Fingerings.default('all') };

/** How one copy is asked for in an address. */
export const PrintAsked = z.object({ for: Reader.default('section'), form: z.enum(['pdf', 'svg', 'mei']).default('pdf'), ...LOOK });

/** How several are asked for: any readers of any parts, as pages or as files of the source's own kind. */
export const PrintsAsked = z.strictObject({
  copies: z.array(z.strictObject({ part: z.string().max(64), for: z.array(Reader).min(1).max(60) })).min(1).max(40),
  form: z.enum(['pdf', 'svg', 'mei', 'musicxml', 'mxl']).default('pdf'),
  ...LOOK,
});

type Look = Pick<PrintOrder, 'paper' | 'margins' | 'staff' | 'fingerings'> & { marks: CopyMarks };

/** A copy before it is said in which form it is made. */
export type OrderedCopy = Omit<PrintOrder, 'form'>;

/** No file system takes these in a name. */
const inFileNames = (text: string): string => text.replace(/[\\/:*?"<>|]/g, '_');

const dayOf = (at: Date): string => at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** Refuses a desk or seat the section does not have. */
export function seatIn(facts: PartFacts, reader: Reader): void {
  if (reader !== 'section' && !readersOf(reader, facts.seats).length) throw trouble(404, 'NO_SUCH_SEAT', `The section has nobody at ${readerWords(reader).toLowerCase()}. Choose one of its desks or seats, or the whole section.`);
}

/** The order for one copy of a part, and what the file is called without its ending. Refuses what `seatIn` refuses. */
export async function copyOf(deps: InHall, { part, state, facts }: MarkedPart, reader: Reader, { marks, paper, margins, staff, fingerings }: Look): Promise<{ order: OrderedCopy; name: string }> {
  seatIn(facts, reader);
  const seat = readerWords(reader);
  const { title, composer } = part.work;
  const source = (await deps.store.library.source(part.edition))!;
  const at = deps.now();
  const clean = marks === 'none';
  // The last of the log, whatever the clock said then.
  const latest = state.ink.reduce<Stamp | null>((newest, { inked }) => (newest && newest.seq > inked.seq ? newest : inked), null);
  const edition = `Edition ${part.revision}${latest && !clean ? `, marks of ${dayOf(new Date(latest.at))}` : ''}, printed ${dayOf(at)}`;
  return {
    name: inFileNames([title, part.content.name, seat, clean ? 'clean' : ''].filter(Boolean).join(' - ')),
    order: {
      ...source,
      part: part.content.id,
      stored: part.content,
      marks: clean ? [] : marksOnCopy(state, reader, facts.seats).filter(({ note }) => facts.notes.has(note)),
      heading: { title, composer, instrument: part.content.name, seat, edition },
      paper,
      margins,
      staff,
      fingerings,
      at: at.toISOString(),
    },
  };
}

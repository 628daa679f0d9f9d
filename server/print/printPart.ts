import { numberAt } from '../../core/music/printedNumber.ts';
import type { Trouble } from '../../core/agreement/wire/http.ts';
import type { EngravingDocument } from '../../core/musicxml/engravingDocument.ts';
import type { ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import { withFingerings } from '../../core/print/fingerings.ts';
import { marginsOf } from '../../core/print/margins.ts';
import { paperNamed, staffAllowed } from '../../core/print/paper.ts';
import { turnKind, turnRests } from '../../core/print/turns.ts';
import { openFile } from '../files/openFile.ts';
import { meiOf } from './engraver.ts';
import { titleHeight } from './headings.ts';
import { markedText } from './markedText.ts';
import { textForMei } from './mei.ts';
import type { PageTurn, Printed, PrintOrder } from './order.ts';
import { pageSvg, type PageFrame, titleSvg } from './pageSvg.ts';
import { PdfWriter } from './pdf.ts';
import { setMusic, type SetPage } from './setMusic.ts';
import { shownMarks } from './shownMarks.ts';

/** Quarters a minute where a part gives no tempo, as the checker assumes. */
const ASSUMED_TEMPO = 90;
/** Room for the running head in millimetres, and how far apart lines stand at least in staff spaces. Chosen, not measured. */
const HEAD = 6;
const ROOM = { gap: 1, apart: 6.5 };

/** A part with its marks as pages. Refuses what cannot be read, and staves too small for two players. */
export async function printPart(order: PrintOrder): Promise<Printed | { ok: false; trouble: Trouble }> {
  const allowed = staffAllowed(order.staff);
  if (!allowed.ok) return { ok: false, trouble: { code: 'STAFF_TOO_SMALL', text: allowed.text } };
  const file = await openFile(order.bytes, order.fileName);
  if (!file.ok) return { ok: false, trouble: file.fault };
  const marks = withFingerings(order.stored, order.marks, order.fingerings);
  if (order.form === 'mei') return meiPrint(textForMei(file.text, { ...order, marks }));
  const marked = markedText(file.text, { ...order, marks });
  if (!marked.ok) return { ok: false, trouble: marked.fault };
  const part = order.stored;
  const place = { paper: paperNamed(order.paper), margins: marginsOf(order.paper, order.margins), heading: order.heading };
  const { paper, margins } = place;
  const space = order.staff / 4;
  const [firstTop, top] = [margins.top + titleHeight(place), margins.top + HEAD];
  const highest = paper.height - margins.bottom;
  const sheet = { line: (paper.width - margins.inner - margins.outer) / space, firstHeight: (highest - firstTop) / space, height: (highest - top) / space, ...ROOM };
  const rests = turnRests(part, ASSUMED_TEMPO);
  const shown = shownMarks(part, marks);
  const { pages, begins, musicFace } = await setMusic(marked.text, part, shown, sheet, rests);
  const numberOf = (ordinal: number): string => numberAt(part, ordinal);
  const turns = pages.slice(0, -1).flatMap((page, i): PageTurn[] => ((begins + i) % 2 ? [turnAfter(page, begins + i, rests, numberOf)] : []));
  const quick = new Set(turns.filter(({ kind }) => kind !== 'good').map(({ page }) => page));
  const frame: PageFrame = { ...place, space, begins, firstTop, top, numberOf, quick, musicFace };
  const svgs = [...(begins > 1 ? [titleSvg(frame)] : []), ...pages.map((page, i) => pageSvg(page, begins + i, frame))];
  const files = order.form === 'svg' ? svgs.map((svg) => ({ bytes: Buffer.from(svg), mediaType: 'image/svg+xml' })) : [{ bytes: await pdf(svgs, frame, order), mediaType: 'application/pdf' }];
  return { ok: true, pages: svgs.length, turns, warnings: [...(allowed.warning ? [allowed.warning] : []), ...withoutNote(pages, shown)], files };
}

async function meiPrint(made: EngravingDocument): Promise<Printed | { ok: false; trouble: Trouble }> {
  if (!made.ok) return { ok: false, trouble: made.fault };
  return { ok: true, pages: 0, turns: [], warnings: [], files: [{ bytes: Buffer.from(await meiOf(made.text)), mediaType: 'application/mei+xml' }] };
}

/** Says so when a mark's note is not on any page, so that no mark is lost in silence. */
function withoutNote(pages: readonly SetPage[], shown: readonly ShownMark[]): string[] {
  const printed = new Set(pages.flatMap(({ systems }) => systems.flatMap(({ drawing }) => Object.keys(drawing.geometry.notes))));
  const lost = shown.filter(({ note }) => !printed.has(note)).length;
  return lost ? [`Marks on notes that are not printed: ${lost}. Compare the copy with the stand before it goes out.`] : [];
}

function turnAfter({ systems }: SetPage, page: number, rests: ReturnType<typeof turnRests>, numberOf: PageFrame['numberOf']): PageTurn {
  const { last } = systems.at(-1)!;
  const rest = rests.get(last)!;
  return { page, measure: numberOf(last), seconds: Math.round((rest.before + rest.after) * 100) / 100, kind: turnKind(rest) };
}

async function pdf(svgs: readonly string[], { paper, heading }: PageFrame, { at }: PrintOrder): Promise<Buffer> {
  const writer = new PdfWriter(paper, { title: `${heading.title} - ${heading.instrument}`, author: heading.composer, subject: heading.seat, at: new Date(at) });
  for (const svg of svgs) writer.page(svg);
  return writer.end();
}

import { isLettered, STROKES, type Stroke } from '../../core/engraving/marks/figures.ts';
import { paperNamed } from '../../core/print/paper.ts';
import { drawMarks } from '../../server/print/drawMarks.ts';
import { PdfWriter } from '../../server/print/pdf.ts';
import { type DrawnPage, type DrawnPath, type DrawnText, frameOf, type Frame, readPdf, sameShape } from './pdfDrawing.ts';

/** A sign of ours found on a printed page. */
export interface FoundSign {
  stroke: Stroke | 'words';
  frame: Frame;
}

let shapes: Promise<Map<Stroke, readonly number[]>> | undefined;

/** How each sign that is drawn, not lettered, looks in a PDF: every one printed alone. */
async function signShapes(): Promise<Map<Stroke, readonly number[]>> {
  const found = new Map<Stroke, readonly number[]>();
  for (const stroke of (Object.keys(STROKES) as Stroke[]).filter((one) => !isLettered(one))) {
    const writer = new PdfWriter(paperNamed('a4'), { title: '', author: '', subject: '', at: new Date(0) });
    writer.page(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 210 297">${drawMarks([{ note: 'n', name: 'x', state: 'adopted', stroke, x: 100, y: 100, scale: 1, x0: 0, x1: 0, height: 0 }])}</svg>`);
    found.set(stroke, (await readPdf(await writer.end()))[0]!.paths[0]!.shape);
  }
  return found;
}

const isFace = ({ face }: DrawnText, name: string): boolean => face.endsWith(name);
const letterFrame = ({ x, y, size, width }: DrawnText): Frame => ({ x0: x, x1: x + width, y0: y - 0.7 * size, y1: y });

/** Neighbouring letters of one line of text as one. */
function joined(letters: readonly DrawnText[]): DrawnText[] {
  const lines: DrawnText[] = [];
  for (const letter of letters) {
    const line = lines.at(-1);
    if (line && Math.abs(line.y - letter.y) < 1e-6 && Math.abs(line.x + line.width - letter.x) < 0.15 * letter.size) {
      line.text += letter.text;
      line.width = letter.x + letter.width - line.x;
    } else lines.push({ ...letter });
  }
  return lines;
}

interface Signs {
  signs: FoundSign[];
  others: DrawnPath[];
  texts: DrawnText[];
}

const read = new WeakMap<DrawnPage, Promise<Signs>>();

/** Our signs on a page, and everything else that is drawn there except the staff; looked for once a page. */
export const signsOn = (page: DrawnPage): Promise<Signs> => read.get(page) ?? read.set(page, findSigns(page)).get(page)!;

async function findSigns(page: DrawnPage): Promise<Signs> {
  const known = [...(await (shapes ??= signShapes()))];
  const signs: FoundSign[] = [];
  const others: DrawnPath[] = [];
  for (const path of page.paths) {
    const sign = known.find(([, shape]) => sameShape(shape, path.shape));
    if (sign) signs.push({ stroke: sign[0], frame: frameOf(path) });
    else others.push(path);
  }
  for (const line of joined(page.texts.filter((text) => isFace(text, 'Besley-ExtraBold')))) signs.push({ stroke: line.text as Stroke, frame: letterFrame(line) });
  for (const line of joined(page.texts.filter((text) => isFace(text, 'AlegreyaSans-Bold')))) signs.push({ stroke: 'words', frame: letterFrame(line) });
  return { signs, others, texts: joined(page.texts.filter((text) => !isFace(text, 'Besley-ExtraBold') && !isFace(text, 'AlegreyaSans-Bold'))) };
}

const isLevel = ({ points: [a, b], filled }: DrawnPath): boolean => !filled && a !== undefined && b !== undefined && Math.abs(a[1] - b[1]) < 1e-4;

/** Heights of all staves of a page: five lines one over another that begin and end together. */
export function staffHeights(page: DrawnPage): number[] {
  const columns = new Map<string, number[]>();
  for (const path of page.paths) {
    if (path.points.length !== 2 || !isLevel(path)) continue;
    const [a, b] = path.points as [readonly [number, number], readonly [number, number]];
    const key = `${a[0].toFixed(2)} ${b[0].toFixed(2)}`;
    columns.set(key, [...(columns.get(key) ?? []), a[1]]);
  }
  return [...columns.values()].flatMap((unsorted) => {
    const ys = unsorted.toSorted((a, b) => a - b);
    return ys.flatMap((y, i) => {
      const four = ys[i + 4];
      if (four === undefined) return [];
      const space = (four - y) / 4;
      const even = [1, 2, 3].every((k) => Math.abs(ys[i + k]! - y - k * space) < 0.02);
      return even && space < 3 ? [four - y] : [];
    });
  });
}

/** Where the staves of a page begin and end. */
export function staffEdges(page: DrawnPage): { left: number; right: number } {
  const xs = page.paths.filter((path) => path.points.length === 2 && isLevel(path)).flatMap(({ points }) => points.map(([x]) => x));
  return { left: Math.min(...xs), right: Math.max(...xs) };
}

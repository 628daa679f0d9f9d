import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

type Point = readonly [x: number, y: number];
type Matrix = readonly [number, number, number, number, number, number];

/** A filled or stroked outline as small straight pieces, in mm from the top left corner; `shape` is the same for one sign wherever and however large it is drawn. */
export interface DrawnPath {
  points: Point[];
  shape: readonly number[];
  filled: boolean;
  width: number;
}

/** A piece of text in mm: where its baseline begins, its size and width. */
export interface DrawnText {
  text: string;
  face: string;
  x: number;
  y: number;
  size: number;
  width: number;
}

export interface DrawnPage {
  width: number;
  height: number;
  paths: DrawnPath[];
  texts: DrawnText[];
  /** As a reader's search finds it. */
  words: string;
}

export interface Frame {
  x0: number;
  x1: number;
  y0: number;
  y1: number;
}

/** What a path covers, its line included. */
export const frameOf = ({ points, filled, width }: DrawnPath): Frame => {
  const half = filled ? 0 : width / 2;
  return { x0: Math.min(...points.map(([x]) => x)) - half, x1: Math.max(...points.map(([x]) => x)) + half, y0: Math.min(...points.map(([, y]) => y)) - half, y1: Math.max(...points.map(([, y]) => y)) + half };
};

const MM = 25.4 / 72;
const times = (a: Matrix, b: Matrix): Matrix => [a[0] * b[0] + a[2] * b[1], a[1] * b[0] + a[3] * b[1], a[0] * b[2] + a[2] * b[3], a[1] * b[2] + a[3] * b[3], a[0] * b[4] + a[2] * b[5] + a[4], a[1] * b[4] + a[3] * b[5] + a[5]];
const apply = (m: Matrix, [x, y]: Point): Point => [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];

/** Straight pieces of one path in its own coordinates. */
function flattened(ops: readonly number[], numbers: readonly number[]): Point[] {
  const points: Point[] = [];
  let at = 0;
  const next = (): Point => [numbers[at++]!, numbers[at++]!];
  for (const op of ops) {
    const from = points.at(-1) ?? [0, 0];
    if (op === OPS.moveTo || op === OPS.lineTo) points.push(next());
    else if (op === OPS.curveTo) {
      const [b, c, d] = [next(), next(), next()];
      for (let i = 1; i <= 24; i += 1) {
        const t = i / 24;
        points.push([0, 1].map((k) => (1 - t) ** 3 * from[k]! + 3 * (1 - t) ** 2 * t * b[k]! + 3 * (1 - t) * t * t * c[k]! + t ** 3 * d[k]!) as unknown as Point);
      }
    } else if (op === OPS.rectangle) {
      const [[x, y], [w, h]] = [next(), next()];
      points.push([x, y], [x + w, y], [x + w, y + h], [x, y + h], [x, y]);
    }
  }
  return points;
}

/** Coordinates of a path without place and size. */
function shapeOf(numbers: readonly number[]): number[] {
  const xs = numbers.filter((_, i) => i % 2 === 0);
  const ys = numbers.filter((_, i) => i % 2 === 1);
  const size = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) || 1;
  return numbers.map((n, i) => Math.round(((n - (i % 2 ? Math.min(...ys) : Math.min(...xs))) / size) * 200));
}

/** True for one sign drawn twice, at any place and size. */
export const sameShape = (a: readonly number[], b: readonly number[]): boolean => a.length === b.length && a.every((n, i) => Math.abs(n - b[i]!) <= 2);

interface State {
  matrix: Matrix;
  width: number;
  face: string;
  size: number;
}

/** What a PDF draws, page by page, as another program reads it. */
export async function readPdf(bytes: Uint8Array): Promise<DrawnPage[]> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false, useSystemFonts: false }).promise;
  const pages: DrawnPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { fnArray, argsArray } = await page.getOperatorList();
    const content = await page.getTextContent();
    const words = content.items.map((one) => ('str' in one ? one.str + (one.hasEOL ? '\n' : '') : '')).join('');
    pages.push({ width: width * MM, height: height * MM, words, ...drawn(fnArray, argsArray, height, (name) => (page.commonObjs.get(name) as { name: string }).name) });
    page.cleanup();
  }
  await document.destroy();
  return pages;
}

function drawn(ops: readonly number[], args: readonly unknown[], height: number, faceNamed: (name: string) => string): Pick<DrawnPage, 'paths' | 'texts'> {
  const onPage = ([x, y]: Point): Point => [x * MM, (height - y) * MM];
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], width: 1, face: '', size: 0 };
  const kept: State[] = [];
  const paths: DrawnPath[] = [];
  const texts: DrawnText[] = [];
  let pending: { pieces: number[]; numbers: number[] } | null = null;
  let text: Matrix = [1, 0, 0, 1, 0, 0];
  ops.forEach((op, i) => {
    const given = args[i] as never[];
    if (op === OPS.save) kept.push(state);
    else if (op === OPS.restore) state = kept.pop() ?? state;
    else if (op === OPS.transform) state = { ...state, matrix: times(state.matrix, given as unknown as Matrix) };
    else if (op === OPS.setLineWidth) state = { ...state, width: given[0]! };
    else if (op === OPS.setFont) state = { ...state, face: faceNamed(given[0]!), size: given[1]! };
    else if (op === OPS.beginText) text = [1, 0, 0, 1, 0, 0];
    else if (op === OPS.setTextMatrix) text = given.flat() as unknown as Matrix;
    else if (op === OPS.endPath) pending = null;
    else if (op === OPS.constructPath) {
      // The reader hands over a thousand operators at a time, and may cut a path in two.
      const [pieces, numbers] = given as unknown as [number[], number[]];
      pending = { pieces: [...(pending?.pieces ?? []), ...pieces], numbers: [...(pending?.numbers ?? []), ...numbers] };
    } else if ((op === OPS.fill || op === OPS.eoFill || op === OPS.stroke || op === OPS.fillStroke || op === OPS.eoFillStroke) && pending) {
      const scale = Math.sqrt(Math.abs(state.matrix[0] * state.matrix[3] - state.matrix[1] * state.matrix[2]));
      const { pieces, numbers } = pending;
      paths.push({ points: flattened(pieces, numbers).map((point) => onPage(apply(state.matrix, point))), shape: shapeOf(numbers), filled: op !== OPS.stroke, width: state.width * scale * MM });
      pending = null;
    } else if (op === OPS.showText) {
      const glyphs = (given[0] as unknown as (number | { unicode: string; width: number })[]).filter((glyph) => typeof glyph === 'object');
      const matrix = times(state.matrix, text);
      const [x, y] = onPage(apply(matrix, [0, 0]));
      const size = state.size * Math.hypot(matrix[2], matrix[3]) * MM;
      texts.push({ text: glyphs.map(({ unicode }) => unicode).join(''), face: state.face, x, y, size, width: (glyphs.reduce((sum, glyph) => sum + glyph.width, 0) / 1000) * size });
    }
  });
  return { paths, texts };
}

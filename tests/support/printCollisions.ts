import type { DrawnPage, DrawnPath, Frame } from './pdfDrawing.ts';
import { signsOn } from './printedSigns.ts';

/** Millimetres two things may share before they touch: the width of a staff line. */
const TOUCH = 0.2;

const overlap = (a: Frame, b: Frame): boolean => Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0) > TOUCH && Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > TOUCH;

/** Lines of the staff and barlines run through everything. */
const isRuled = ({ points, filled }: DrawnPath): boolean => !filled && points.length === 2;

/** An outline in pieces of half a millimetre, so that what stands under an arch does not touch it. */
function pieces({ points, filled, width }: DrawnPath): Frame[] {
  const half = filled ? 0 : width / 2;
  const frames: Frame[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / 0.5));
    for (let k = 0; k < steps; k += 1) {
      const at = (t: number): [number, number] => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      const [[x0, y0], [x1, y1]] = [at(k / steps), at((k + 1) / steps)];
      // A hair line has no area: give it that of a pen.
      frames.push({ x0: Math.min(x0, x1) - half - TOUCH, x1: Math.max(x0, x1) + half + TOUCH, y0: Math.min(y0, y1) - half - TOUCH / 2, y1: Math.max(y0, y1) + half + TOUCH / 2 });
    }
  }
  return frames;
}

const told = ({ x0, y0 }: Frame) => `at ${x0.toFixed(1)}, ${y0.toFixed(1)} mm`;

/** Every sign of ours that stands in another, in a note, a slur, a beam, or in words. */
export async function collisions(page: DrawnPage): Promise<string[]> {
  const { signs, others, texts } = await signsOn(page);
  const found: string[] = [];
  const drawn = others.filter((path) => !isRuled(path)).flatMap(pieces);
  const written = texts.map(({ text, x, y, size, width }) => ({ text, frame: { x0: x, x1: x + width, y0: y - 0.7 * size, y1: y } }));
  signs.forEach(({ stroke, frame }, i) => {
    for (const other of signs.slice(i + 1)) if (overlap(frame, other.frame)) found.push(`${stroke} ${told(frame)} stands in ${other.stroke}`);
    if (drawn.some((piece) => overlap(frame, piece))) found.push(`${stroke} ${told(frame)} stands in the music`);
    for (const { text, frame: words } of written) if (overlap(frame, words)) found.push(`${stroke} ${told(frame)} stands in "${text}"`);
  });
  return found;
}

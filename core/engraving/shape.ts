import { UNITS, type Box } from './geometry.ts';
import type { Scanned } from './scan.ts';

const sp = (value: string | number) => Number(value) / UNITS;

const boxOf = (points: [number, number][]): Box => ({
  x0: Math.min(...points.map(([x]) => x)),
  x1: Math.max(...points.map(([x]) => x)),
  y0: Math.min(...points.map(([, y]) => y)),
  y1: Math.max(...points.map(([, y]) => y)),
});

const pairs = (text: string): [number, number][] => {
  const numbers = [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(([n]) => sp(n));
  return Array.from({ length: Math.floor(numbers.length / 2) }, (_, i) => [numbers[2 * i]!, numbers[2 * i + 1]!]);
};

/** A curve in short pieces, so that a sign may nestle under an arch. */
function curve([a, b, c, d]: [number, number][]): Box[] {
  const at = (t: number): [number, number] => [0, 1].map((k) => (1 - t) ** 3 * a![k]! + 3 * (1 - t) ** 2 * t * b![k]! + 3 * (1 - t) * t * t * c![k]! + t ** 3 * d![k]!) as [number, number];
  const steps = Math.max(4, Math.ceil((d![0] - a![0]) / 1.5));
  return Array.from({ length: steps }, (_, i) => boxOf([at(i / steps), at((i + 1) / steps)]));
}

/** Heights of music signs above and below their origin, where they are not about half a space; from the engraver's font. */
const GLYPHS: [RegExp, up: number, down: number, width: number][] = [
  [/^E61[0-3]/, 1.8, 0.1, 1.3],
  [/^E4C/, 1.8, 0.1, 2.2],
  [/^E26/, 1.5, 0.8, 1],
  [/^E24/, 0.8, 3, 1.2],
  [/^E56/, 1.6, 0.2, 2.4],
  [/^E5[23]/, 1.8, 0.6, 2],
  [/^E08[0-9]/, 1.05, 1.05, 1.8],
  [/^E88[0-9]/, 1.5, 0.1, 1.1],
];

function glyphBox({ attributes }: Scanned): Box | null {
  const place = /translate\((-?[\d.]+), (-?[\d.]+)\)/.exec(attributes.transform ?? '');
  if (!place) return null;
  const [x, y] = [sp(place[1]!), sp(place[2]!)];
  const code = /#g?([0-9A-F]{4})/.exec(attributes.href ?? '')?.[1] ?? '';
  const known = GLYPHS.find(([pattern]) => pattern.test(code));
  const [up, down, width] = known ? [known[1], known[2], known[3]] : [0.55, 0.55, 1.2];
  return { x0: x, x1: x + width, y0: y - up, y1: y + down };
}

/** Boxes an element covers, in staff spaces; none for groups and for text, whose size stands inside it. */
export function boxesOf(element: Scanned): Box[] {
  const { tag, attributes } = element;
  if (tag === 'path') {
    const points = pairs(attributes.d ?? '');
    return attributes.d?.includes('C') && points.length >= 4 ? curve(points.slice(0, 4)) : points.length ? [boxOf(points)] : [];
  }
  if (tag === 'polygon' || tag === 'polyline') {
    const points = pairs(attributes.points ?? '');
    return points.length ? [boxOf(points)] : [];
  }
  if (tag === 'use') {
    const box = glyphBox(element);
    return box ? [box] : [];
  }
  if (tag === 'rect') {
    const [x, y] = [sp(attributes.x ?? 0), sp(attributes.y ?? 0)];
    return [{ x0: x, x1: x + sp(attributes.width ?? 0), y0: y, y1: y + sp(attributes.height ?? 0) }];
  }
  return [];
}

/** Box of a line of text `width` long that starts at (x, y). */
export function textBox(x: number, y: number, size: number, width: number, anchor: string | undefined): Box {
  const x0 = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
  return { x0, x1: x0 + width, y0: y - size * 0.8, y1: y + size * 0.25 };
}

import { UNITS, type Box, type Geometry } from './geometry.ts';
import { scan, type Scanned } from './scan.ts';
import { boxReader } from './boxReader.ts';
import { boxesOf } from './shape.ts';

const BACKGROUND = new Set(['clef', 'keySig', 'keyAccid', 'meterSig', 'barLine', 'mNum', 'label', 'labelAbbr', 'grpSym', 'ledgerLines']);
const WORDS = new Set(['dynam', 'hairpin', 'dir', 'tempo', 'reh', 'ending', 'pedal']);
const MEASURE = /^m(\d+)$/;
/** Half the width of a black notehead in staff spaces. */
const HALF_HEAD = 0.59;

const sp = (value: string | undefined) => Number(value ?? 0) / UNITS;

/** Centre of a notehead from where its glyph begins; whole notes are wider, grace notes smaller. */
function headCentre({ attributes }: Scanned): { x: number; y: number } | null {
  const place = /translate\((-?[\d.]+), (-?[\d.]+)\) scale\(([\d.]+)/.exec(attributes.transform ?? '');
  if (!place) return null;
  const whole = /#g?E0A2/.test(attributes.href ?? '');
  return { x: sp(place[1]) + (whole ? 0.85 : HALF_HEAD) * (Number(place[3]) / 0.72), y: sp(place[2]) };
}

/** The measures of a counted rest share its width. */
function shared(ordinal: number, x0: number, x1: number, count: number): Geometry['measures'] {
  const wide = (x1 - x0) / count;
  return Array.from({ length: count }, (_, i) => ({ ordinal: ordinal + i, x0: x0 + i * wide, x1: x0 + (i + 1) * wide }));
}

/** Reads where notes, measures and everything around them stand from one system of the engraver's SVG. `spans`: measures counted by a rest, by its first. */
export function readGeometry(svg: string, spans: ReadonlyMap<number, number> = new Map()): Geometry {
  const view = /class="definition-scale"[^>]*viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  const lines: Box[] = [];
  const measures = new Map<number, { x0: number; x1: number }>();
  const geometry: Geometry = { width: sp(view?.[1]), height: sp(view?.[2]), top: 0, bottom: 0, measures: [], notes: {}, near: [], high: [], low: [] };
  const words: Box[] = [];
  const boxesHere = boxReader();

  for (const element of scan(svg)) {
    const measure = element.groups.findLast(({ class: name }) => name === 'measure');
    const ordinal = Number(MEASURE.exec(measure?.id ?? '')?.[1] ?? 0);
    const innermost = element.groups.at(-1)?.class ?? '';
    const group = element.groups.find(({ class: name }) => WORDS.has(name.split(' ')[0]!))?.class.split(' ')[0];
    // What reaches over from the line before hangs in no measure.
    const reachesOver = element.groups.some(({ class: name }) => name.split(' ').includes('spanning'));
    if (!(measure || reachesOver) || element.groups.some(({ class: name }) => BACKGROUND.has(name.split(' ')[0]!))) continue;
    if (element.tag === 'path' && innermost === 'staff') {
      const [box] = boxesOf(element);
      lines.push(box!);
      const known = measures.get(ordinal);
      measures.set(ordinal, { x0: Math.min(known?.x0 ?? Infinity, box!.x0), x1: Math.max(known?.x1 ?? 0, box!.x1) });
      continue;
    }
    (group ? words : geometry.near).push(...boxesHere(element, group));
    const note = element.groups.findLast(({ class: name }) => name.split(' ')[0] === 'note');
    if (element.tag === 'use' && innermost === 'notehead' && note && !geometry.notes[note.id]) {
      const centre = headCentre(element);
      if (centre) geometry.notes[note.id] = { ...centre, measure: ordinal };
    }
  }
  geometry.top = Math.min(...lines.map(({ y0 }) => y0), Infinity);
  geometry.bottom = Math.max(...lines.map(({ y1 }) => y1), 0);
  if (!Number.isFinite(geometry.top)) geometry.top = 0;
  geometry.measures = [...measures].flatMap(([ordinal, { x0, x1 }]) => shared(ordinal, x0, x1, spans.get(ordinal) ?? 1));
  const middle = (geometry.top + geometry.bottom) / 2;
  for (const box of words) ((box.y0 + box.y1) / 2 < middle ? geometry.high : geometry.low).push(box);
  return geometry;
}

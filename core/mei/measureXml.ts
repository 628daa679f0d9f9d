import Fraction from 'fraction.js';
import { DIVISIONS, divisionsOf } from './divisions.ts';
import type { Direction } from './directions.ts';
import { xmlText } from '../musicxml/escape.ts';
import type { LayerEvent } from './layer.ts';
import { eventXml } from './noteXml.ts';
import { Spelling } from './pitches.ts';
import type { ReadMeasure } from './readMeasures.ts';
import type { Signs } from './signs.ts';
import { clefOf, type Standing } from './standing.ts';

const clefXml = (clef: Standing['clef']): string => (clef ? `<clef><sign>${clef.shape === 'perc' ? 'percussion' : clef.shape}</sign><line>${clef.line}</line>${clef.octaves ? `<clef-octave-change>${clef.octaves}</clef-octave-change>` : ''}</clef>` : '');

/** What is new on a staff since the measure before. */
function attributesXml(now: Standing, before: Standing | null): string {
  const differs = (a: unknown, b: unknown): boolean => JSON.stringify(a) !== JSON.stringify(b);
  const inside = [
    before ? '' : `<divisions>${DIVISIONS}</divisions>`,
    now.fifths !== null && now.fifths !== before?.fifths ? `<key><fifths>${now.fifths}</fifths></key>` : '',
    now.meter && differs(now.meter, before?.meter) ? `<time><beats>${xmlText(now.meter.count)}</beats><beat-type>${xmlText(now.meter.unit)}</beat-type></time>` : '',
    differs(now.clef, before?.clef ?? null) ? clefXml(now.clef) : '',
    now.semitones !== (before?.semitones ?? 0) ? `<transpose><diatonic>${now.diatonic % 7}</diatonic><chromatic>${now.semitones % 12}</chromatic><octave-change>${Math.trunc(now.semitones / 12)}</octave-change></transpose>` : '',
  ].join('');
  return inside ? `<attributes>${inside}</attributes>` : '';
}

/** Directions belong before the event that sounds at their time; one that falls inside an event says how far. */
function before(event: LayerEvent, next: LayerEvent | undefined, directions: Direction[]): string {
  const mine: Direction[] = [];
  while (directions.length && (!next || directions[0]!.at.compare(next.onset) < 0)) mine.push(directions.shift()!);
  return mine.map(({ at, xml }) => offsetXml(xml, divisionsOf(at.sub(event.onset)))).join('');
}

function offsetXml(xml: string, offset: number): string {
  if (offset <= 0 || !xml.startsWith('<direction')) return xml;
  const end = /<sound[^>]*\/><\/direction>$/.exec(xml)?.index ?? xml.length - '</direction>'.length;
  return `${xml.slice(0, end)}<offset>${offset}</offset>${xml.slice(end)}`;
}

function barlines({ element, ending }: ReadMeasure): { left: string; right: string } {
  const repeat = (side: string | undefined, direction: 'forward' | 'backward'): string => (side === (direction === 'forward' ? 'rptstart' : 'rptend') || side === 'rptboth' ? `<repeat direction="${direction}"/>` : '');
  const style: Record<string, string> = { dbl: 'light-light', end: 'light-heavy', rptend: 'light-heavy', rptboth: 'light-heavy', invis: 'none', dashed: 'dashed' };
  const number = ending?.number ?? '';
  const left = `${ending?.first ? `<ending number="${number}" type="start"/>` : ''}${repeat(element.attributes.left, 'forward')}`;
  const look = style[element.attributes.right ?? ''];
  const right = `${look ? `<bar-style>${look}</bar-style>` : ''}${ending?.last ? `<ending number="${number}" type="stop"/>` : ''}${repeat(element.attributes.right, 'backward')}`;
  return { left: left && `<barline location="left">${left}</barline>`, right: right && `<barline location="right">${right}</barline>` };
}

/** One measure of one staff as MusicXML. `before` is what stood on the staff in the measure before, null in the first. */
export function measureXml(measure: ReadMeasure, at: { staff: number; measure: number }, earlier: Standing | null, signs: Signs, saysSounding: boolean): string {
  const { layers, repeated, standing } = measure.staves[at.staff]!;
  const spelling = new Spelling(standing.fifths, saysSounding);
  const directions = [...signs.directions(at.staff, at.measure)].sort((a, b) => a.at.compare(b.at));
  const zero = new Fraction(0);
  const written = layers.map((events, i) => {
    const setting = { voice: String(i + 1), spelling, hungOn: repeated ? () => undefined : (element: LayerEvent['element']) => signs.hungOn(element) };
    const inside = events.map((event, k) => {
      const clef = event.clef ? clefXml(clefOf(event.clef.attributes, '')) : '';
      return `${clef ? `<attributes>${clef}</attributes>` : ''}${i === 0 ? before(event, events.slice(k + 1).find(({ grace }) => grace === null) ?? undefined, directions) : ''}${eventXml(event, setting)}`;
    });
    const end = events.reduce((sum, { duration }) => sum.add(duration), zero);
    return { xml: inside.join(''), end };
  });
  const rest = `<note><rest measure="yes"/><duration>${divisionsOf(measure.length)}</duration><voice>1</voice></note>`;
  const music = written.length ? written.map(({ xml }, i) => (i ? `<backup><duration>${divisionsOf(written[i - 1]!.end)}</duration></backup>${xml}` : xml)).join('') : rest;
  const left = directions.map(({ at: time, xml }) => offsetXml(xml, divisionsOf(time))).join('');
  const bars = barlines(measure);
  return `<measure number="${xmlText(measure.number)}"${measure.implicit ? ' implicit="yes"' : ''}>${bars.left}${attributesXml(standing, earlier)}${written.length && written[0]!.xml ? '' : left}${music}${bars.right}</measure>`;
}

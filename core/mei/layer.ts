import Fraction from 'fraction.js';
import type { XmlElement } from '../musicxml/element.ts';
import { valueOf, type Value } from './durations.ts';
import { idOf, shown } from './shown.ts';

export interface Ratio {
  num: number;
  numbase: number;
}

/** A note, chord, rest or space where it stands in its layer. */
export interface LayerEvent {
  element: XmlElement;
  kind: 'note' | 'chord' | 'rest' | 'wholeRest' | 'space';
  onset: Fraction;
  /** Quarters it sounds; 0 for a grace note. */
  duration: Fraction;
  value: Value | null;
  dots: number;
  grace: 'slashed' | 'plain' | null;
  tuplet: Ratio | null;
  tupletEdge: ('start' | 'stop')[];
  beam: 'begin' | 'continue' | 'end' | null;
  /** Strokes through the stem; a pair is bowed to and fro. */
  tremolo: { strokes: number; pair: 'start' | 'stop' | null } | null;
  /** A clef that is changed before it. */
  clef: XmlElement | null;
}

interface Frame {
  ratio: Ratio | null;
  grace: boolean;
  pair: { strokes: number; of: number } | null;
  bowed: number | null;
}

/** Whole-measure signs that take the measure's own length. */
const WHOLE: Record<string, LayerEvent['kind']> = { mRest: 'wholeRest', mSpace: 'space', multiRest: 'wholeRest' };
const SINGLE: Record<string, LayerEvent['kind']> = { note: 'note', chord: 'chord', rest: 'rest', space: 'space' };
const strokesIn = (text: string | undefined): number | null => (/^([1-6])slash$/.test(text ?? '') ? Number(text![0]) : null);

const ratioOf = ({ attributes }: XmlElement): Ratio => ({ num: Number(attributes.num) || 3, numbase: Number(attributes.numbase) || 2 });

/** Music this reader cannot put in time stops the reading where it stands. */
export class Untimed extends Error {
  readonly element: XmlElement;
  constructor(element: XmlElement) {
    super('untimed');
    this.element = element;
  }
}

function durOf(element: XmlElement): string | undefined {
  return element.attributes.dur ?? shown(element).find(({ name }) => name === 'note')?.attributes.dur;
}

/**
 * One layer of a measure as events at exact times: beams, tuplets (containers, or spans by the ids where they begin and end), grace groups and tremolos opened.
 * `whole` is the measure's length in quarters. Throws `Untimed` at a note or rest without a value, and at shorthand for beats or half measures.
 * Source: MEI Guidelines 5.1, chapter 4. Example: a triplet of eighths lies at 0, 1/3 and 2/3.
 */
export function readLayer(layer: XmlElement, whole: Fraction, spans: ReadonlyMap<string, { until: string; ratio: Ratio }>): LayerEvent[] {
  const events: LayerEvent[] = [];
  let now = new Fraction(0);
  let clef: XmlElement | null = null;
  let open: { until: string; ratio: Ratio } | null = null;

  function add(element: XmlElement, kind: LayerEvent['kind'], frame: Frame): void {
    const id = idOf(element);
    const begun = id === null ? undefined : spans.get(id);
    if (begun) open = begun;
    const ratio = frame.ratio ?? open?.ratio ?? null;
    const isGrace = frame.grace || element.attributes.grace !== undefined;
    const isWhole = element.name in WHOLE;
    const dots = Number(element.attributes.dots ?? 0) || shown(element).filter(({ name }) => name === 'dot').length;
    const dur = durOf(element);
    const value = isWhole ? null : dur === undefined ? null : valueOf(dur, dots);
    if (!isWhole && !value) throw new Untimed(element);
    let duration = isGrace ? new Fraction(0) : isWhole ? whole : value!.quarters;
    if (ratio && !isGrace && !isWhole) duration = duration.mul(ratio.numbase).div(ratio.num);
    if (frame.pair) duration = duration.div(2);
    const strokes = strokesIn(element.attributes['stem.mod']) ?? frame.bowed;
    const pair = frame.pair && { strokes: frame.pair.strokes, pair: (frame.pair.of === 0 ? 'start' : 'stop') as 'start' | 'stop' };
    events.push({
      element,
      kind,
      onset: now,
      duration,
      value,
      dots,
      grace: isGrace ? (element.attributes.grace === 'unacc' ? 'slashed' : 'plain') : null,
      tuplet: isWhole ? null : ratio,
      tupletEdge: begun ? ['start'] : [],
      beam: null,
      tremolo: pair ?? (strokes ? { strokes, pair: null } : null),
      clef,
    });
    clef = null;
    now = now.add(duration);
    if (open && id === open.until) {
      events.at(-1)!.tupletEdge.push('stop');
      open = null;
    }
  }

  function walk(parent: XmlElement, frame: Frame): void {
    let pairs = 0;
    for (const element of shown(parent)) {
      const from = events.length;
      const { name } = element;
      if (name in SINGLE) {
        add(element, SINGLE[name]!, frame.pair ? { ...frame, pair: { ...frame.pair, of: pairs++ } } : frame);
      } else if (name in WHOLE) add(element, WHOLE[name]!, frame);
      else if (name === 'clef') clef = element;
      else if (name === 'beam') {
        walk(element, frame);
        markBeam(events.slice(from));
      } else if (name === 'tuplet') {
        walk(element, { ...frame, ratio: ratioOf(element) });
        const inside = events.slice(from);
        inside[0]?.tupletEdge.push('start');
        inside.at(-1)?.tupletEdge.push('stop');
      } else if (name === 'graceGrp') walk(element, { ...frame, grace: true });
      else if (name === 'bTrem') walk(element, { ...frame, bowed: 3 });
      else if (name === 'fTrem') walk(element, { ...frame, pair: { strokes: Number(element.attributes.beams) || 3, of: 0 } });
      else if (name === 'ligature') walk(element, frame);
      else if (name === 'beatRpt' || name === 'halfmRpt' || name === 'mRpt2') throw new Untimed(element);
    }
  }

  walk(layer, { ratio: null, grace: false, pair: null, bowed: null });
  return events;
}

function markBeam(events: readonly LayerEvent[]): void {
  const beamed = events.filter(({ kind, grace }) => (kind === 'note' || kind === 'chord') && grace === null);
  if (beamed.length < 2) return;
  for (const [i, event] of beamed.entries()) event.beam = i === 0 ? 'begin' : i === beamed.length - 1 ? 'end' : 'continue';
}

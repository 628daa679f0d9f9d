import Fraction from 'fraction.js';
import { childrenNamed, type XmlElement } from '../musicxml/element.ts';
import type { FlowStep } from './flow.ts';
import { readLayer, type LayerEvent, type Ratio } from './layer.ts';
import { pointed, shown, shownNamed } from './shown.ts';
import { define, measureLength, type Standing } from './standing.ts';
import type { Staff } from './staves.ts';

/** One measure of one staff. */
export interface StaffMeasure {
  layers: LayerEvent[][];
  /** Its notes are those of an earlier measure: no sign of that one hangs here. */
  repeated: boolean;
  standing: Standing;
}

export interface ReadMeasure {
  element: XmlElement;
  number: string;
  implicit: boolean;
  ending: Extract<FlowStep, { kind: 'measure' }>['ending'];
  /** Quarters. */
  length: Fraction;
  /** In the order of the staves. */
  staves: StaffMeasure[];
}

const ZERO = new Fraction(0);
const endOf = (events: readonly LayerEvent[]): Fraction => events.reduce((end, { kind, onset, duration }) => (kind === 'wholeRest' ? end : onset.add(duration).compare(end) > 0 ? onset.add(duration) : end), ZERO);

/** Tuplets that are written as spans from one id to another. */
function spansIn(steps: readonly FlowStep[]): Map<string, { until: string; ratio: Ratio }> {
  const spans = new Map<string, { until: string; ratio: Ratio }>();
  for (const { element } of steps) {
    for (const { attributes } of childrenNamed(element, 'tupletSpan')) {
      const [from, until] = [pointed(attributes.startid), pointed(attributes.endid)];
      if (from && until) spans.set(from, { until, ratio: { num: Number(attributes.num) || 3, numbase: Number(attributes.numbase) || 2 } });
    }
  }
  return spans;
}

function applyDefinition(staves: readonly Staff[], standings: readonly Standing[], element: XmlElement): void {
  const inside = (of: XmlElement): XmlElement[] => of.children.flatMap((child) => (child.name === 'staffDef' ? [child] : child.name === 'staffGrp' ? inside(child) : []));
  const own = element.name === 'staffDef' ? [element] : inside(element);
  if (element.name === 'scoreDef') for (const standing of standings) define(standing, element);
  for (const definition of own) {
    const at = staves.findIndex(({ n }) => n === definition.attributes.n);
    if (at >= 0) define(standings[at]!, definition);
  }
}

/** How many measures a measure stands for: more than one where every staff rests through several. */
function countOf(element: XmlElement): number {
  const rests = shownNamed(element, 'staff').map((staff) => shownNamed(staff, 'layer').flatMap(shown).find(({ name }) => name === 'multiRest'));
  const counts = rests.map((rest) => Number(rest?.attributes.num ?? 1));
  return counts.length && counts.every((count) => count === counts[0]) && counts[0]! > 1 ? Math.min(counts[0]!, 999) : 1;
}

/**
 * Every measure of the score with the events of every staff. A rest through several measures becomes as many; "as the measure before" is written out.
 * A measure that does not fill its meter is as long as what is in it. Throws `Untimed` as `readLayer` does.
 */
export function readMeasures(steps: readonly FlowStep[], staves: readonly Staff[]): ReadMeasure[] {
  const spans = spansIn(steps);
  const standings = staves.map(({ standing }) => structuredClone(standing));
  const before: XmlElement[][] = staves.map(() => []);
  const read: ReadMeasure[] = [];
  for (const step of steps) {
    const { element } = step;
    if (step.kind === 'definition') {
      applyDefinition(staves, standings, element);
      continue;
    }
    const sources = staves.map(({ n }, i) => {
      const layers = shownNamed(element, 'staff').filter((staff) => staff.attributes.n === n).flatMap((staff) => shownNamed(staff, 'layer'));
      const repeated = layers.some((layer) => shown(layer).some(({ name }) => name === 'mRpt'));
      if (!repeated) before[i] = layers;
      return { layers: repeated ? before[i]! : layers, repeated };
    });
    const nominal = measureLength(standings[0]!);
    const whole = sources.map(({ layers }) => layers.map((layer) => readLayer(layer, nominal, spans)));
    const filled = whole.flat().map(endOf).reduce((longest, end) => (end.compare(longest) > 0 ? end : longest), ZERO);
    const isShort = filled.compare(0) > 0 && (filled.compare(nominal) > 0 || element.attributes.metcon === 'false' || element.attributes.n === '0');
    const length = isShort ? filled : nominal;
    const count = countOf(element);
    for (let i = 0; i < count; i += 1) {
      const number = element.attributes.n ?? String(read.length + 1);
      read.push({
        element,
        number: i ? String(Number(number) + i || '') : number,
        implicit: element.attributes.n === '0' || (element.attributes.metcon === 'false' && read.length === 0),
        ending: i ? null : step.ending,
        length,
        staves: sources.map(({ layers, repeated }, at) => ({ layers: isShort ? layers.map((layer) => readLayer(layer, length, spans)) : whole[at]!, repeated: repeated || i > 0, standing: structuredClone(standings[at]!) })),
      });
    }
    followClefs(standings, read.at(-1)!);
  }
  return read;
}

/** A clef changed within a measure stands after it. */
function followClefs(standings: readonly Standing[], { staves }: ReadMeasure): void {
  for (const [i, { layers }] of staves.entries()) {
    const clef = layers.flat().findLast((event) => event.clef)?.clef;
    if (clef) define(standings[i]!, { ...clef, children: [clef], attributes: {} });
  }
}

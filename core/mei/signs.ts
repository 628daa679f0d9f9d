import type Fraction from 'fraction.js';
import type { XmlElement } from '../musicxml/element.ts';
import { type Direction, directionXml, wedgeXml } from './directions.ts';
import { xmlText } from '../musicxml/escape.ts';
import { type Hung, nothingHung } from './notations.ts';
import { type EventPlace, type Places, placesOf } from './places.ts';
import type { ReadMeasure } from './readMeasures.ts';
import { pointed, shown, wordsOf } from './shown.ts';
import { numberedSpans, type Span } from './spans.ts';
import { stampTime } from './standing.ts';
import type { Staff } from './staves.ts';

/** What the signs of all measures come to: what hangs on notes, and directions by staff and measure. */
export interface Signs {
  hungOn(element: XmlElement): Hung | undefined;
  directions(staff: number, measure: number): readonly Direction[];
}

const ORNAMENTS: Record<string, string> = { trill: '<trill-mark/>', mordent: '<mordent/>', turn: '<turn/>' };

/** Reads everything that stands beside the staves of a measure: slurs, ties, fingers, dynamics, words. What this reader does not know is left out. Source: MEI Guidelines 5.1, chapters 2 and 4. */
export class SignReader implements Signs {
  private readonly hung = new Map<XmlElement, Hung>();
  private readonly said = new Map<string, Direction[]>();
  private readonly slurs: Span[] = [];
  private readonly slides: Span[] = [];
  private readonly places: Places;
  private readonly measures: readonly ReadMeasure[];
  private readonly staves: readonly Staff[];
  private readonly text: string;

  constructor(measures: readonly ReadMeasure[], staves: readonly Staff[], text: string) {
    this.measures = measures;
    this.staves = staves;
    this.text = text;
    this.places = placesOf(measures);
    const read = new Set<XmlElement>();
    for (const [i, { element }] of measures.entries()) {
      if (read.has(element)) continue;
      read.add(element);
      for (const sign of shown(element)) this.read(sign, i);
    }
    for (const { from, to, number } of numberedSpans(this.slurs)) {
      this.on(from.element).slurs.push({ type: 'start', number });
      this.on(to.element).slurs.push({ type: 'stop', number });
    }
    for (const { from, to, number } of numberedSpans(this.slides)) {
      this.on(from.element).slides.push({ type: 'start', number });
      this.on(to.element).slides.push({ type: 'stop', number });
    }
  }

  hungOn(element: XmlElement): Hung | undefined {
    return this.hung.get(element);
  }

  directions(staff: number, measure: number): readonly Direction[] {
    return this.said.get(`${staff} ${measure}`) ?? [];
  }

  private on(element: XmlElement): Hung {
    const hung = this.hung.get(element) ?? nothingHung();
    this.hung.set(element, hung);
    return hung;
  }

  private stavesOf({ attributes }: XmlElement, start: EventPlace | undefined): number[] {
    const named = (attributes.staff ?? '').split(/\s+/).map((n) => this.staves.findIndex((staff) => staff.n === n)).filter((at) => at >= 0);
    return named.length ? named : start ? [start.staff] : [0];
  }

  /** Time of a sign within its measure, in quarters. */
  private time(sign: XmlElement, measure: number, start: EventPlace | undefined): Fraction {
    if (start) return start.onset;
    const standing = this.measures[measure]!.staves[0]!.standing;
    return stampTime(standing, Number(sign.attributes.tstamp ?? 1) || 1);
  }

  /** Measure and time where a sign ends: "1m+2.5" is the second measure, time stamp 2.5. */
  private endOf({ attributes }: XmlElement, measure: number): { measure: number; time: Fraction } | null {
    const read = /^(?:(\d+)m\s*\+\s*)?([\d.]+)$/.exec(attributes.tstamp2 ?? '');
    if (!read) return null;
    const at = Math.min(measure + Number(read[1] ?? 0), this.measures.length - 1);
    return { measure: at, time: stampTime(this.measures[at]!.staves[0]!.standing, Number(read[2])) };
  }

  private read(sign: XmlElement, measure: number): void {
    if (sign.name === 'fingGrp') {
      for (const inner of shown(sign)) this.read({ ...inner, attributes: { ...sign.attributes, ...inner.attributes } }, measure);
      return;
    }
    const start = this.places.byId(pointed(sign.attributes.startid));
    const staves = this.stavesOf(sign, start);
    const at = this.time(sign, measure, start);
    const from = start ?? this.places.at(staves[0]!, measure, at);
    const end = this.endOf(sign, measure);
    const to = this.places.byId(pointed(sign.attributes.endid)) ?? (end ? this.places.at(staves[0]!, end.measure, end.time) : undefined);
    switch (sign.name) {
      case 'slur':
      case 'phrase':
      case 'gliss':
        if (from && to && from.staff === to.staff && from.order < to.order) (sign.name === 'gliss' ? this.slides : this.slurs).push({ from, to });
        return;
      case 'tie':
        if (from) this.on(from.element).ties.add('start');
        if (to) this.on(to.element).ties.add('stop');
        return;
      case 'fing': {
        const figure = xmlText(wordsOf(sign, this.text));
        if (from && figure) this.on(from.element).technical.push(`<fingering${sign.attributes.form === 'subst' ? ' substitution="yes"' : ''}>${figure}</fingering>`);
        return;
      }
      case 'fermata':
        if (from) this.on(from.element).fermata = true;
        return;
      case 'arpeg':
        if (from) this.on(from.element).arpeggio = true;
        return;
      case 'trill':
      case 'mordent':
      case 'turn':
        if (from) this.on(from.element).ornaments.push(ORNAMENTS[sign.name]!);
        return;
      case 'hairpin': {
        const type = sign.attributes.form === 'cres' ? 'crescendo' : 'diminuendo';
        const until = to && sign.attributes.endid ? { measure: to.measure, time: to.onset } : (end ?? { measure, time: this.measures[measure]!.length });
        for (const staff of staves) {
          this.say(staff, measure, at, wedgeXml(type, sign.attributes.place));
          this.say(staff, until.measure, until.time, wedgeXml('stop', sign.attributes.place));
        }
        return;
      }
      default: {
        const xml = directionXml(sign, this.text);
        if (xml) for (const staff of staves) this.say(staff, measure, at, xml);
      }
    }
  }

  private say(staff: number, measure: number, at: Fraction, xml: string): void {
    const key = `${staff} ${measure}`;
    this.said.set(key, [...(this.said.get(key) ?? []), { at, xml }]);
  }
}

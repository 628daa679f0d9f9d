import type Fraction from 'fraction.js';
import type { XmlElement } from '../musicxml/element.ts';
import { xmlText } from '../musicxml/escape.ts';
import { valueOf } from './durations.ts';
import { wordsOf } from './shown.ts';

/** A direction of a staff at a time in its measure. */
export interface Direction {
  at: Fraction;
  xml: string;
}

const DYNAMICS = new Set(['pppp', 'ppp', 'pp', 'p', 'mp', 'mf', 'f', 'ff', 'fff', 'ffff', 'sf', 'sfz', 'sffz', 'fz', 'fp', 'sfp', 'rf', 'rfz', 'sfpp', 'pf']);

const typed = (inside: string, placement: string | undefined, more = ''): string => `<direction${placement === 'above' || placement === 'below' ? ` placement="${placement}"` : ''}><direction-type>${inside}</direction-type>${more}</direction>`;

export const wedgeXml = (type: 'crescendo' | 'diminuendo' | 'stop', placement: string | undefined): string => typed(`<wedge type="${type}"/>`, placement);

function metronome({ attributes }: XmlElement): { sign: string; sound: string } {
  const unit = valueOf(attributes['mm.unit'] ?? '4', Number(attributes['mm.dots'] ?? 0));
  const figure = Number(attributes.mm ?? NaN);
  const beats = Number(attributes['midi.bpm'] ?? NaN);
  const bpm = beats > 0 ? beats : figure > 0 && unit ? figure * unit.quarters.valueOf() : NaN;
  const plain = valueOf(attributes['mm.unit'] ?? '4', 0);
  const sign = figure > 0 && plain ? `<direction-type><metronome><beat-unit>${plain.type}</beat-unit>${'<beat-unit-dot/>'.repeat(Number(attributes['mm.dots'] ?? 0))}<per-minute>${figure}</per-minute></metronome></direction-type>` : '';
  return { sign, sound: bpm > 0 ? `<sound tempo="${bpm}"/>` : '' };
}

/** One sign of a measure as a direction; null for a sign that is none, or is empty. `text` is the document. */
export function directionXml(sign: XmlElement, text: string): string | null {
  const words = xmlText(wordsOf(sign, text));
  const { place } = sign.attributes;
  switch (sign.name) {
    case 'dynam':
      if (DYNAMICS.has(words)) return typed(`<dynamics><${words}/></dynamics>`, place ?? 'below');
      return words ? typed(`<words font-style="italic">${words}</words>`, place ?? 'below') : null;
    case 'dir':
      return words ? typed(`<words>${words}</words>`, place ?? 'above') : null;
    case 'reh':
      return words ? typed(`<rehearsal>${words}</rehearsal>`, 'above') : null;
    case 'tempo': {
      const { sign: mark, sound } = metronome(sign);
      if (!words && !mark && !sound) return null;
      const types = `${words ? `<direction-type><words font-weight="bold">${words}</words></direction-type>` : ''}${mark}`;
      return types ? `<direction placement="above">${types}${sound}</direction>` : sound;
    }
    default:
      return null;
  }
}

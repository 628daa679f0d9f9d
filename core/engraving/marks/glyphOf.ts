import type { Finger, MarkValue } from '../../music/mark.ts';
import type { Stroke } from './figures.ts';

/** How a mark looks: one sign (with a small one beside it), or words. `level` orders marks outward from the note. */
export interface Glyph {
  stroke?: Stroke;
  words?: string;
  level: number;
  /** Struck through: what stands here is to be rubbed out. */
  struck?: true;
}

const ROMAN: readonly Stroke[] = ['I', 'II', 'III', 'IV'];
const fingerStroke = (finger: Finger): Stroke => String(finger) as Stroke;

const SLOT_STROKES: Partial<Record<string, Stroke>> = { finger: '0', string: 'I', reach: 'extension', harmonic: 'harmonic', bow: 'down', change: 'change', retake: 'retake', hooked: 'hooked', slur: 'join' };

/** Signs of a mark, nearest the note first. A substitution is two figures; a mark that rubs out shows what it rubs out, where that is known. */
export function glyphsOf(value: MarkValue, rubbedOut?: MarkValue): Glyph[] {
  switch (value.kind) {
    case 'finger': {
      const first: Glyph = { stroke: fingerStroke(value.finger), level: 0 };
      return value.substitution === undefined ? [first] : [first, { stroke: fingerStroke(value.substitution), level: 0 }];
    }
    case 'reach':
      return [{ stroke: value.reach, level: 1 }];
    case 'harmonic':
      return [{ stroke: 'harmonic', level: 2 }];
    case 'bow':
      return [{ stroke: value.bow, level: 3 }];
    case 'change':
    case 'retake':
    case 'hooked':
      return [{ stroke: value.kind, level: 4 }];
    case 'slur':
      return [{ stroke: value.slur, level: 4 }];
    case 'string':
      return [{ stroke: ROMAN[value.string - 1]!, level: 5 }];
    case 'text':
      return [{ words: value.text, level: 6 }];
    case 'none': {
      if (rubbedOut) return glyphsOf(rubbedOut).map((glyph) => ({ ...glyph, struck: true }));
      const stroke = SLOT_STROKES[value.slot];
      return [stroke ? { stroke, level: 4, struck: true } : { words: '…', level: 6, struck: true }];
    }
  }
}

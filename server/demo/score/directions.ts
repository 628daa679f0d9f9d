import type { Landmark } from './plan.ts';
import { element, escape } from './xml.ts';

type Placement = 'above' | 'below';
const ABOVE = new Set(['div.', 'unis.', 'pizz.', 'arco']);
const WEDGES: Record<string, string> = { '<': 'crescendo', '>': 'diminuendo', '!': 'stop' };
const DYNAMIC = /^(p{1,3}|m[pf]|f{1,3})$/;

const direction = (placement: Placement, type: string, after = ''): string =>
  element('direction', element('direction-type', type) + after, { placement });

const words = (placement: Placement, text: string, style: Record<string, string>, after = ''): string =>
  direction(placement, element('words', escape(text), style), after);

/** Writes the directions of one part in order; a hairpin ends where a dynamic or the next hairpin begins. */
export class Directions {
  #openWedge = false;

  write(text: string): string {
    const wedge = WEDGES[text];
    if (wedge !== undefined) return this.#close() + (wedge === 'stop' ? '' : this.#open(wedge));
    if (DYNAMIC.test(text)) return this.#close() + direction('below', element('dynamics', element(text)));
    if (text === 'pizz.') return words('above', text, {}, element('sound', '', { pizzicato: 'yes' }));
    if (text === 'arco') return words('above', text, {}, element('sound', '', { pizzicato: 'no' }));
    return ABOVE.has(text) ? words('above', text, {}) : words('below', text, { 'font-style': 'italic' });
  }

  #close(): string {
    if (!this.#openWedge) return '';
    this.#openWedge = false;
    return direction('below', element('wedge', '', { type: 'stop', number: 1 }));
  }

  #open(type: string): string {
    this.#openWedge = true;
    return direction('below', element('wedge', '', { type, number: 1 }));
  }
}

/** The landmark's letter, tempo and words, above every part. */
export function landmarkDirections({ rehearsal, tempo, words: text }: Landmark): string {
  let xml = rehearsal === undefined ? '' : direction('above', element('rehearsal', rehearsal));
  if (tempo !== undefined) {
    const dotted = tempo.unit === 'quarter.';
    const metronome = element('metronome', `${element('beat-unit', 'quarter')}${dotted ? element('beat-unit-dot') : ''}${element('per-minute', tempo.perMinute)}`, { parentheses: 'no' });
    const sound = element('sound', '', { tempo: tempo.perMinute * (dotted ? 1.5 : 1) });
    xml += element('direction', element('direction-type', element('words', escape(tempo.words), { 'font-weight': 'bold' })) + element('direction-type', metronome) + sound, { placement: 'above' });
  }
  return text === undefined ? xml : xml + words('above', text, { 'font-style': 'italic' });
}

import type { InstrumentName, Measure, Note, Part, Slur, TechnicalMark } from '../../core/music/part.ts';
import { midiOf, type Pitch } from '../../core/music/pitch.ts';
import { type ExactTime, exact, fraction, plus } from '../../core/music/time.ts';

const PRINTED: Record<string, TechnicalMark> = {
  up: { name: 'up-bow' },
  down: { name: 'down-bow' },
  open: { name: 'open-string' },
  thumb: { name: 'thumb-position' },
  harm: { name: 'harmonic', detail: { natural: '' } },
  art: { name: 'harmonic', detail: { artificial: '' } },
};
const STRINGS = ['I', 'II', 'III', 'IV'];

function printed(sign: string): TechnicalMark {
  if (sign.startsWith('!')) return { ...printed(sign.slice(1)), hidden: true };
  if (PRINTED[sign]) return { ...PRINTED[sign] };
  if (STRINGS.includes(sign)) return { name: 'string', value: String(STRINGS.indexOf(sign) + 1) };
  return { name: 'fingering', value: sign.replace('+', '\n') };
}

function pitchOf(text: string): Pitch {
  const [, step, sign, octave] = /^([A-G])(bb|b|##|#)?(-?\d)$/.exec(text) ?? [];
  if (!step) throw new Error(`No pitch: ${text}`);
  return { step: step as Pitch['step'], alter: sign ? (sign.startsWith('b') ? -1 : 1) * sign.length : 0, octave: Number(octave) };
}

interface Builder {
  dynamic: string | null;
  tempo: number | null;
  pizzicato: boolean;
  slurStart: string | null;
  slurs: Slur[];
  /** Tie still open, by voice. */
  tied: Map<string, boolean>;
}

/** One token: `[^]PITCH:QUARTERS` or `[P P]:Q` or `r:Q`, then any of `( ) ~ ' *` and printed signs in `<>` (hidden with `!`), e.g. `D5:3/2(<up>`. */
function notesOf(token: string, ordinal: number, at: ExactTime, voice: string, counts: { notes: number; rests: number }, builder: Builder, transposition: number): Note[] {
  const [, grace, body, length, tail] = /^(\^?)(\[[^\]]+\]|[^:[\s]+):(\d+(?:\/\d+)?)(.*)$/.exec(token) ?? [];
  if (!body || !length) throw new Error(`No note: ${token}`);
  const duration = grace ? 0 : exact(fraction(length));
  const shared = { onset: at, duration, voice, dynamic: builder.dynamic, tempo: builder.tempo, articulations: tail!.includes("'") ? ['staccato'] : [], ornaments: tail!.includes('*') ? ['tremolo:3'] : [], ...(builder.pizzicato ? { pizzicato: true as const } : {}), ...(grace ? { grace: true as const } : {}) };
  if (body === 'r') return [{ ...shared, id: `m${ordinal}r${counts.rests++}`, rest: true, index: -1, slurs: [], ties: [], technical: [] }];
  const wasTied = builder.tied.get(voice) ?? false;
  const ties: Note['ties'] = [...(wasTied ? (['stop'] as const) : []), ...(tail!.includes('~') ? (['start'] as const) : [])];
  builder.tied.set(voice, tail!.includes('~'));
  const notes = body.replace(/[[\]]/g, '').split(' ').map((text, member): Note => {
    const pitch = pitchOf(text);
    const index = counts.notes++;
    return { ...shared, id: `m${ordinal}n${index}`, pitch, midi: midiOf(pitch), ...(transposition ? { sounding: midiOf(pitch) + transposition } : {}), index, slurs: [], ties: [...ties], technical: member ? [] : [...tail!.matchAll(/<([^>]+)>/g)].map((sign) => printed(sign[1]!)), ...(member ? { chord: true as const } : {}) };
  });
  const [head] = notes as [Note];
  if (tail!.includes(')') && builder.slurStart) builder.slurs.push({ from: builder.slurStart, to: head.id });
  if (tail!.includes('(')) builder.slurStart = head.id;
  return notes;
}

/**
 * A part from a line of text: measures between `|`, voices between `&&`, `{p}` `{q=60}` `{pizz}` `{arco}` from there on.
 * Note ids are `m<measure>n<index>`, rests `m<measure>r<index>`. Slurs do not nest; write those into `slurs` by hand.
 * Example: `partOf('{p} {q=60} D5:4( | E5:2) r:2')`.
 */
export function partOf(text: string, options: { instrument?: InstrumentName | null; numbers?: string[] } = {}): Part {
  const instrument = options.instrument === undefined ? 'violin' : options.instrument;
  const transposition = instrument === 'double-bass' ? -12 : 0;
  const builder: Builder = { dynamic: null, tempo: null, pizzicato: false, slurStart: null, slurs: [], tied: new Map() };
  let start: ExactTime = 0;
  const measures = text.split('|').map((measureText, index): Measure => {
    const counts = { notes: 0, rests: 0 };
    let length: ExactTime = 0;
    const notes = measureText.split('&&').flatMap((voiceText, voice) => {
      let at: ExactTime = 0;
      return (voiceText.match(/\{[^}]*\}|\^?\[[^\]]*\]\S*|\S+/g) ?? []).flatMap((token) => {
        if (token.startsWith('{')) {
          const word = token.slice(1, -1);
          if (word.startsWith('q=')) builder.tempo = Number(word.slice(2));
          else if (word === 'pizz' || word === 'arco') builder.pizzicato = word === 'pizz';
          else builder.dynamic = word;
          return [];
        }
        const made = notesOf(token, index + 1, at, String(voice + 1), counts, builder, transposition);
        at = plus(at, made[0]!.duration);
        if (fraction(at).compare(fraction(length)) > 0) length = at;
        return made;
      });
    });
    const measure: Measure = { ordinal: index + 1, number: options.numbers?.[index] ?? String(index + 1), start, length, time: null, fifths: null, words: [], wedges: [], notes };
    start = plus(start, length);
    return measure;
  });
  return { id: 'P1', name: 'Part', instrument, transposition, measures, slurs: builder.slurs };
}

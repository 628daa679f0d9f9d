import type { Pitch } from '../../../core/music/pitch.ts';
import type { MarkTable } from '../../../core/music/words/markTable.ts';
import { comma } from './italian.ts';

/** Marks in Italian. */
export const marks: MarkTable = {
  nothing: {
    finger: 'nessun dito',
    string: 'nessuna corda',
    reach: 'né estensione né contrazione',
    harmonic: 'nessun armonico',
    bow: 'nessun segno d’arco',
    change: 'nessun cambio d’arco',
    retake: 'arco non ripreso',
    hooked: 'non nella stessa arcata',
    slur: 'legatura come stampata',
    text: 'nessuna parola',
  },
  finger: (finger) => (finger === 0 ? 'corda vuota' : finger === 'thumb' ? 'pollice' : `${finger}º dito`),
  substitution: (first, then) => `${first}, poi ${then} sulla stessa nota`,
  string: (numeral) => `corda ${numeral}`,
  reach: { extension: 'estensione', contraction: 'contrazione' },
  harmonic: { natural: 'armonico', artificial: 'armonico artificiale' },
  bow: { up: 'arcata in su', down: 'arcata in giù' },
  changeAtOnce: 'cambio d’arco all’inizio della nota',
  changeAfter: (beats, many) => `cambio d’arco ${beats} ${many ? 'tempi' : 'tempo'} dopo l’inizio della nota`,
  noChange: (change) => `nessun ${change}`,
  retake: 'ripresa d’arco',
  hooked: 'nella stessa arcata',
  slur: { split: 'nuova legatura da questa nota', join: 'la legatura prosegue fino alla nota seguente' },
  text: (text) => `«${text}»`,
  everyone: 'tutta la sezione',
  seat: (desk, outside) => `leggio ${desk} ${outside ? 'esterno' : 'interno'}`,
};

const SYLLABLES: Record<Pitch['step'], string> = { C: 'do', D: 're', E: 'mi', F: 'fa', G: 'sol', A: 'la', B: 'si' };
const ALTERED: Record<string, string> = { '-2': ' doppio bemolle', '-1': ' bemolle', '0': '', '1': ' diesis', '2': ' doppio diesis' };

/** A pitch in the Italian count of octaves, where middle C is do 3. Example: `{ step: 'B', alter: -1, octave: 4 }` is "si bemolle 3". */
export const pitch = ({ step, alter, octave }: Pitch): string => `${SYLLABLES[step]}${ALTERED[String(alter)] ?? ` ${alter > 0 ? '+' : '−'}${comma(String(Math.abs(alter)))}`} ${octave - 1}`;

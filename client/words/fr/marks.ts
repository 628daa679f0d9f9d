import type { Pitch } from '../../../core/music/pitch.ts';
import type { MarkTable } from '../../../core/music/words/markTable.ts';
import { comma, ordinal } from './french.ts';

/** Marks in French. */
export const marks: MarkTable = {
  nothing: {
    finger: 'aucun doigt',
    string: 'aucune corde',
    reach: 'ni extension ni contraction',
    harmonic: 'pas d’harmonique',
    bow: 'aucun signe d’archet',
    change: 'pas de changement d’archet',
    retake: 'pas de reprise d’archet',
    hooked: 'pas dans le même coup d’archet',
    slur: 'liaison comme imprimée',
    text: 'pas de mots',
  },
  finger: (finger) => (finger === 0 ? 'corde à vide' : finger === 'thumb' ? 'pouce' : `${finger === 1 ? '1er' : ordinal(finger)} doigt`),
  substitution: (first, then) => `${first}, puis ${then} sur la même note`,
  string: (numeral) => `corde ${numeral}`,
  reach: { extension: 'extension', contraction: 'contraction' },
  harmonic: { natural: 'harmonique', artificial: 'harmonique artificiel' },
  bow: { up: 'poussé', down: 'tiré' },
  changeAtOnce: 'changement d’archet au début de la note',
  changeAfter: (beats) => `changement d’archet ${beats} temps après le début de la note`,
  noChange: (change) => `pas de ${change}`,
  retake: 'reprise d’archet',
  hooked: 'dans le même coup d’archet',
  slur: { split: 'nouvelle liaison dès cette note', join: 'la liaison continue jusqu’à la note suivante' },
  text: (text) => `« ${text} »`,
  everyone: 'tout le pupitre',
  seat: (desk, outside) => `rang ${desk} ${outside ? 'extérieur' : 'intérieur'}`,
};

const SYLLABLES: Record<Pitch['step'], string> = { C: 'do', D: 'ré', E: 'mi', F: 'fa', G: 'sol', A: 'la', B: 'si' };
const ALTERED: Record<string, string> = { '-2': ' double bémol', '-1': ' bémol', '0': '', '1': ' dièse', '2': ' double dièse' };

/** A pitch in the French count of octaves, where middle C is do 3. Example: `{ step: 'B', alter: -1, octave: 4 }` is "si bémol 3". */
export const pitch = ({ step, alter, octave }: Pitch): string => `${SYLLABLES[step]}${ALTERED[String(alter)] ?? ` ${alter > 0 ? '+' : '−'}${comma(String(Math.abs(alter)))}`} ${octave - 1}`;

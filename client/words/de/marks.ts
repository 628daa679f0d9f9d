import type { MarkTable } from '../../../core/music/words/markTable.ts';
import type { Pitch } from '../../../core/music/pitch.ts';
import { comma } from './german.ts';

/** Marks in German. */
export const marks: MarkTable = {
  nothing: {
    finger: 'kein Finger',
    string: 'keine Saite',
    reach: 'keine Streckung, kein Zusammenziehen',
    harmonic: 'kein Flageolett',
    bow: 'kein Strichzeichen',
    change: 'kein Bogenwechsel',
    retake: 'nicht neu angesetzt',
    hooked: 'nicht angehängt',
    slur: 'Bindebogen wie gedruckt',
    text: 'keine Worte',
  },
  finger: (finger) => (finger === 0 ? 'leere Saite' : finger === 'thumb' ? 'Daumen' : `${finger}. Finger`),
  substitution: (first, then) => `${first}, dann ${then} auf derselben Note`,
  string: (numeral) => `Saite ${numeral}`,
  reach: { extension: 'Streckung', contraction: 'Zusammenziehen' },
  harmonic: { natural: 'Flageolett', artificial: 'künstliches Flageolett' },
  bow: { up: 'Aufstrich', down: 'Abstrich' },
  changeAtOnce: 'Bogenwechsel mit Beginn der Note',
  changeAfter: (beats, many) => `Bogenwechsel ${beats} ${many ? 'Schläge' : 'Schlag'} nach Beginn der Note`,
  noChange: (change) => `kein ${change}`,
  retake: 'neu ansetzen',
  hooked: 'angehängt',
  slur: { split: 'neuer Bindebogen ab dieser Note', join: 'Bindebogen geht weiter zur nächsten Note' },
  text: (text) => `„${text}“`,
  everyone: 'die ganze Gruppe',
  seat: (desk, outside) => `Pult ${desk} ${outside ? 'außen' : 'innen'}`,
};

const SHARPS: Record<Pitch['step'], string> = { C: 'Cis', D: 'Dis', E: 'Eis', F: 'Fis', G: 'Gis', A: 'Ais', B: 'His' };
const FLATS: Record<Pitch['step'], string> = { C: 'Ces', D: 'Des', E: 'Es', F: 'Fes', G: 'Ges', A: 'As', B: 'B' };
const DOUBLE_FLATS: Record<Pitch['step'], string> = { C: 'Ceses', D: 'Deses', E: 'Eses', F: 'Feses', G: 'Geses', A: 'Ases', B: 'Heses' };

function letter(step: Pitch['step'], alter: number): string {
  switch (alter) {
    case 0:
      return step === 'B' ? 'H' : step;
    case 1:
      return SHARPS[step];
    case 2:
      return `${SHARPS[step]}is`;
    case -1:
      return FLATS[step];
    case -2:
      return DOUBLE_FLATS[step];
    default:
      return `${step === 'B' ? 'H' : step} ${alter > 0 ? '+' : '−'}${comma(String(Math.abs(alter)))}`;
  }
}

/** A pitch in its German octave: `{ step: 'B', alter: -1, octave: 4 }` is "b′", `{ step: 'F', alter: 1, octave: 2 }` "Fis", an octave lower "Fis₁". */
export function pitch({ step, alter, octave }: Pitch): string {
  const name = letter(step, alter);
  if (octave >= 3) return name.toLowerCase() + '′'.repeat(octave - 3);
  return octave === 2 ? name : `${name}${'₁₂₃'[1 - octave] ?? ''}`;
}

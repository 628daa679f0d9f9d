import type { Severity } from '../../../core/check/finding.ts';
import type { Words } from '../en.ts';

const severities: Record<Severity, string> = { cannotPlay: 'non si può suonare', collides: 'si scontra', worthALook: 'da guardare' };
const weights: Record<Severity, string> = {
  cannotPlay: 'Così com’è segnato non si può suonare: si mostra per primo.',
  collides: 'Due strumentisti o due segni si intralciano.',
  worthALook: 'Da guardare: chi suona vorrebbe saperlo. Lo metta a riposo dove è voluto.',
};
const families: Record<string, string> = { fingering: 'Le dita', bow: 'L’arco', desk: 'Allo stesso leggio', section: 'La sezione', parts: 'La parte', notation: 'I segni sulla pagina' };

const sources: Record<string, string> = {
  'musicxml-4': 'W3C Music Notation Community Group, MusicXML 4.0, 2021',
  davidoff: 'K. Davidoff, Violoncell-Schule, 1888',
  simandl: 'F. Simandl, Nuovo metodo per contrabbasso; dita a memoria',
  tnua: 'TNUA, raccolta di diteggiature per violino: dieci professionisti, 2021',
  hoffmann: 'R. Hoffmann, Bow length',
  stringsection: 'stringsection.co.uk, sui cambi liberi, 2012',
  zlotbox: 'zlotbox.com, sui cambi liberi',
  green: 'E. Green, Orchestral Bowings and Routines, 1957; a memoria',
  thart: 'J. ’t Hart, quando uno scivolamento si sente come tale, 1976; a memoria',
  martens: 'F. Martens, Violin Mastery, 1919',
  'common-practice': 'Uso comune, senza fonte',
  'from-memory': 'A memoria, non ricontrollato',
  chosen: 'Numeri scelti, non misurati; una sezione può fissare i suoi',
};

/** The pages about the rules. */
export const rules = {
  middle: 'che cosa cercano gli occhiali',
  where: (rules) => `${rules} regole. Ne segua una per leggere il perché.`,
  sub: 'Tab e Invio: a una regola',
  one: 'Una delle regole.',
  oneSub: 'Dove non si adatta alla Sua musica, metta a riposo l’osservazione sul leggio.',
  weight: 'Quanto pesa',
  says: 'Che cosa dice',
  source: 'Da dove viene',
  all: 'tutte le regole',
  why: 'di più su questa regola',
  severities,
  weights,
  families,
  sources,
} satisfies Words['rules'];

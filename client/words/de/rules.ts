import type { Severity } from '../../../core/check/finding.ts';
import type { Words } from '../en.ts';

const severities: Record<Severity, string> = { cannotPlay: 'nicht spielbar', collides: 'im Weg', worthALook: 'der Beachtung wert' };
const weights: Record<Severity, string> = {
  cannotPlay: 'So, wie es bezeichnet ist, nicht spielbar: wird zuerst gezeigt.',
  collides: 'Zwei Spieler oder zwei Zeichen stehen einander im Weg.',
  worthALook: 'Der Beachtung wert: man möchte es wissen. Legen Sie es zur Ruhe, wo es so gemeint ist.',
};
const families: Record<string, string> = { fingering: 'Finger', bow: 'Der Bogen', desk: 'Am Pult', section: 'Die Gruppe', parts: 'Die Stimme', notation: 'Zeichen auf der Seite' };

const sources: Record<string, string> = {
  'musicxml-4': 'W3C Music Notation Community Group, MusicXML 4.0, 2021',
  davidoff: 'K. Davidoff, Violoncell-Schule, 1888',
  simandl: 'F. Simandl, Neueste Methode des Contrabass-Spiels; Fingersätze aus dem Gedächtnis',
  tnua: 'TNUA, Sammlung von Violinfingersätzen: zehn Berufsmusiker, 2021',
  hoffmann: 'R. Hoffmann, Bow length',
  stringsection: 'stringsection.co.uk, über freie Bogenwechsel, 2012',
  zlotbox: 'zlotbox.com, über freie Bogenwechsel',
  green: 'E. Green, Orchestral Bowings and Routines, 1957; aus dem Gedächtnis',
  thart: 'J. ’t Hart, wann ein Gleiten als Gleiten gehört wird, 1976; aus dem Gedächtnis',
  martens: 'F. Martens, Violin Mastery, 1919',
  'common-practice': 'Allgemeiner Brauch, ohne Quelle',
  'from-memory': 'Aus dem Gedächtnis, nicht nachgeprüft',
  chosen: 'Zahlen gewählt, nicht gemessen; eine Gruppe kann eigene festlegen',
};

/** The pages about the rules. */
export const rules = {
  middle: 'worauf die Brille achtet',
  where: (rules) => `${rules} Regeln. Folgen Sie einer, um zu lesen, warum.`,
  sub: 'Tab und Eingabe: zu einer Regel',
  one: 'Eine der Regeln.',
  oneSub: 'Wo sie nicht zu Ihrer Musik passt, legen Sie den Befund auf dem Notenpult zur Ruhe.',
  weight: 'Wie schwer sie wiegt',
  says: 'Was sie sagt',
  source: 'Woher sie kommt',
  all: 'alle Regeln',
  why: 'mehr zu dieser Regel',
  severities,
  weights,
  families,
  sources,
} satisfies Words['rules'];

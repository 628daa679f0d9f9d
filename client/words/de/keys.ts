import type { Words } from '../en.ts';

/** The keys on the stand. */
export const keys = {
  title: 'Tasten am Notenpult',
  close: 'Esc schließt das',
  rows: [
    ['links rechts', 'Note'], ['Strg links rechts', 'Takt'], ['Umschalt links rechts', 'Stelle'], ['auf ab', 'Platz, oder Zettel, wenn offen'],
    ['0–4', 'Finger'], ['t', 'Daumen'], ['=', 'dann ein Finger: er löst ab'], ['Umschalt 1–4', 'Saite'], ['x', 'Streckung, Zusammenziehen'], ['h', 'Flageolett'],
    ['d u', 'Abstrich, Aufstrich'], ['c', 'Bogenwechsel'], [', .', 'den Wechsel früher, später'], ['r', 'neu ansetzen'], ['o', 'angehängt'], ['k j', 'Bindebogen teilen, verbinden'], ['/', 'Worte'],
    ['Rücktaste', 'ausradieren'], ['z', 'zurück'], ['Umschalt z', 'wieder hin'], ['p', 'der nächste Stift'],
    ['Eingabe', 'Zettel hinlegen; Takt öffnen; festschreiben'], ['Esc', 'verlassen, schließen'], ['+ −', 'dafür, dagegen'], ['s', 'etwas sagen'], ['a', 'beiseite legen'], ['b', 'eigenen Zettel zurücknehmen'], ['m', 'zur Ruhe legen'], ['i', 'was beiseite gelegt wurde'], ['q', 'die Geschichte des Takts'],
    ['f', 'Fingersätze für die Stelle in der Hand'], ['a b', 'dort: einen über, einen unter das System legen'], ['v', 'ihre Bogenwechsel verteilen'], ['e', 'der Bogen auf seinem Haar'], ['y', 'wie die anderen Gruppen streichen'], ['Leertaste', 'die Stelle in der Hand hören; anhalten'], ['Umschalt Leertaste', 'die Gruppe spielen hören'], ['g', 'zum Takt'], ['n', 'nächster offener'], ['w', 'nächstes zu beachten'], ['Umschalt Y', 'eine andere Stimme unter jeder Zeile'], ['< >', 'kleiner, größer'], ['Umschalt V', 'Zeilen und Seiten wie gedruckt'], ['Strg P', 'die Stimme drucken'], ['l', 'Pultlicht'], ['Alt 1–4', 'Regal, Mappe, Notenpult, Gruppe'],
  ] as [string, string][],
} satisfies Words['keys'];

/** The words on the ledge. */
export const tools = {
  goTo: 'zu Takt',
  nextOpen: 'nächster offener',
  nextWatch: 'nächstes zu beachten',
  open: 'öffnen',
  close: 'schließen',
  lay: 'Zettel hinlegen',
  inkIn: 'festschreiben',
  takeBack: 'zurück',
  pencil: 'nächster Stift',
  keys: 'Tasten',
  say: 'etwas sagen',
  light: 'Licht',
  fingerings: 'Fingersätze',
  shareOut: 'die Wechsel verteilen',
  hair: 'der Bogen auf seinem Haar',
  beside: 'wie die anderen Gruppen streichen',
  short: { beside: 'andere', hair: 'Bogen', shareOut: 'verteilen', take: 'nehmen', open: 'nächster', watch: 'Achtung', say: 'sagen' },
} satisfies Words['tools'];

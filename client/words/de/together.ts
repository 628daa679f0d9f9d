import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './german.ts';

const marks = (n: number): string => capital(count(n, 'Zeichen'));

/** From one open measure to the next. */
export const run = {
  at: (measure, at, of) => `Takt ${measure}, offener Takt ${at} von ${of}.`,
  leads: (slip, plus, minus) => `${slip} liegt vorn, ${plus} dafür, ${minus} dagegen.`,
  lies: (slip, plus, minus) => `${slip} liegt hier, ${plus} dafür, ${minus} dagegen.`,
  inkOrOn: 'Eingabe schreibt ihn fest, n geht weiter.',
  voteOrOn: '+ ist dafür, − dagegen, n geht weiter.',
  inked: (slip, n) => `${slip} ist festgeschrieben, ${count(n, 'Zeichen')}.`,
  still: (slips) => `${slips} noch hier: a legt beiseite.`,
  goOn: (left) => `n öffnet den nächsten; ${count(left, 'Takt', 'Takte')} noch offen.`,
  last: 'Kein anderer Takt ist offen.',
  end: (met, decided, open) => `${capital(count(met, 'offener Takt', 'offene Takte'))} durchgegangen: ${decided} entschieden, ${open} noch offen. ${open ? 'n beginnt von vorn.' : 'Der Durchgang ist fertig.'}`,
} satisfies Words['run'];

const INTERVALS = ['auf gleicher Höhe', 'einen Halbton', 'einen Ganzton', 'eine kleine Terz', 'eine große Terz', 'eine Quarte', 'einen Tritonus', 'eine Quinte', 'eine kleine Sexte', 'eine große Sexte', 'eine kleine Septime', 'eine große Septime', 'eine Oktave'];
const interval = (by: number): string => `${INTERVALS[Math.abs(by)] ?? `${Math.abs(by)} Halbtöne`} ${by > 0 ? 'höher' : 'tiefer'}`;

/** Marks to where the same figure comes again. */
export const elsewhere = {
  title: 'Dieselbe Figur anderswo in dieser Stimme',
  passageFirst: 'Nehmen Sie erst eine Stelle in die Hand: Umschalt und ein Pfeil. Eine Note allein ist keine Figur.',
  nothingThere: 'In dieser Stelle steht noch nichts. Bezeichnen Sie sie hier, dann können die Zeichen dorthin, wo sie wiederkommt.',
  nowhere: 'Diese Figur kommt in dieser Stimme sonst nicht vor. Eine kürzere Stelle vielleicht.',
  likeness: (likeness, by) => (likeness === 'same' ? 'dieselben Noten' : likeness === 'transposed' ? `dieselben, ${interval(by)}` : by === 0 ? 'dieselben Schritte, andere Halbtöne' : `dieselben Schritte, ${interval(by)}`),
  stays: (n) => `${count(n, 'Zeichen der Hand', 'Zeichen der Hand')} ${n === 1 ? 'bleibt' : 'bleiben'} zurück: dort nicht spielbar`,
  stands: 'schon so bezeichnet',
  lay: (n) => (n === 1 ? 'die Zeichen dort mit Bleistift eintragen' : `die Zeichen an ${count(n, 'Stelle', 'Stellen', 'eine')} mit Bleistift eintragen`),
  noneChosen: 'Alle Stellen sind ausgelassen. Behalten Sie eine, oder verlassen Sie die Liste mit Esc.',
  laid: (n, places) => `${marks(n)} an ${count(places, 'Stelle', 'Stellen', 'einer')} mit Bleistift eingetragen. Eingabe legt sie als Zettel hin, z nimmt alle zurück.`,
  already: 'Dort ist die Figur schon so bezeichnet.',
  behind: (n) => `${capital(count(n, 'Zeichen der Hand', 'Zeichen der Hand'))} ${n === 1 ? 'blieb' : 'blieben'} zurück: dort nicht spielbar.`,
} satisfies Words['elsewhere'];

/** Names in what is said. */
export const named = {
  hint: '@ und ein Name: die Person erfährt es',
  people: 'Wer gemeint ist',
} satisfies Words['named'];

/** What waits. */
export const waits = {
  title: 'Was auf Sie wartet',
  nothing: 'Hier wartet nichts auf Sie.',
  nothingAnywhere: 'Nichts wartet auf Sie.',
  fetched: 'Es wird nachgesehen, was auf Sie wartet.',
  count: (n) => (n === 1 ? 'eines wartet auf Sie' : `${n} warten auf Sie`),
  kinds: { named: 'Ihr Name fällt', vote: 'Ihre Stimme', talk: 'Gespräch auf Ihren Zetteln', watch: 'An Ihrem Platz zu beachten', decided: 'Entschieden, seit Sie hier waren' },
  vote: (slip, who) => `${slip} von ${who} wartet auf Ihre Stimme.`,
  named: (who, where, text) => `${who}, ${where}: „${text}“`,
  talk: (slip, who, text) => `${who} auf Ihrem ${slip}: „${text}“`,
  watch: (where, text) => `${where}: ${text}`,
  adopted: (slip, who) => `${slip} wurde von ${who} festgeschrieben.`,
  setAside: (slip, who) => `${slip} wurde von ${who} beiseite gelegt.`,
  withdrawn: (slip, who) => `${slip} wurde von ${who} zurückgenommen.`,
  go: 'Eingabe geht hin, Esc verlässt die Liste.',
  inPart: (work, part) => `${work}, Stimme ${part}`,
} satisfies Words['waits'];

/** Sentences in the ledge. */
export const notices = {
  named: (who, where) => `${who} nennt Sie, ${where}. Umschalt n zeigt, was auf Sie wartet.`,
  laid: (slip, who) => `${who} legt ${slip} in einen Takt, in den Sie geschrieben haben. Umschalt n zeigt, was auf Sie wartet.`,
  adopted: (slip, who) => `Ihr ${slip} ist von ${who} festgeschrieben.`,
  setAside: (slip, who) => `Ihr ${slip} ist von ${who} beiseite gelegt.`,
  on: 'Die Leiste sagt, wenn Sie genannt werden oder etwas von Ihnen entschieden ist.',
  off: 'Die Leiste sagt nicht mehr, wenn etwas geschieht. Umschalt s stellt es wieder an.',
} satisfies Words['notices'];

/** Letters by e-mail. */
export const letters = {
  title: 'Briefe per E-Mail',
  what: (minutes) => `Ein Brief, höchstens alle ${minutes} Minuten, wenn jemand Sie nennt, ein Zettel vor einer Probe auf Ihre Stimme wartet oder etwas von Ihnen entschieden ist. Nur Sie sehen die Adresse.`,
  none: 'Diese Bibliothek verschickt keine Briefe. Die Bibliothek kann das einrichten.',
  address: 'E-Mail-Adresse',
  keep: 'Briefe an mich',
  forget: 'keine Briefe mehr',
  kept: (address) => `Briefe gehen an ${address}. In jedem steht, wie man sie abstellt.`,
  forgotten: 'Keine Briefe mehr; die Adresse ist vergessen.',
} satisfies Words['letters'];

import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, day } from './german.ts';

const ROMAN = ['½', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII', 'XIII', 'XIV', 'XV', 'XVI', 'XVII', 'XVIII', 'XIX', 'XX', 'XXI', 'XXII', 'XXIII', 'XXIV'];
const ZONES: Readonly<Record<string, string>> = { comfortable: 'bequem', stretched: 'gestreckt', exceptional: 'ungewöhnlich weit' };

const marks = (n: number): string => capital(count(n, 'Zeichen'));

/** Signs that can be written. */
export const signs = {
  label: 'Zeichen',
  finger: (n) => (n === '0' ? 'leere Saite' : n === 'thumb' ? 'Daumen' : `${n}. Finger`),
  string: (roman) => `Saite ${roman}`,
  down: 'Abstrich',
  up: 'Aufstrich',
  change: 'Bogenwechsel',
  reach: 'Hand: Streckung, Zusammenziehen, keines',
  harmonic: 'Flageolett',
  retake: 'neu ansetzen',
  hooked: 'angehängt',
  split: 'Bindebogen teilen',
  join: 'Bindebogen verbinden',
  substitution: 'der nächste Finger löst auf der Note ab',
  words: 'Worte',
  rub: 'ausradieren',
  undo: 'zurück',
  more: 'mehr Zeichen',
  short: { undo: 'zurück', rub: 'radieren', more: 'mehr' },
} satisfies Words['signs'];

/** Sentences on the stand. */
export const stand = {
  draft: (n, where) => `${marks(n)} mit Bleistift in ${where}.`,
  nothingOpen: 'Kein Takt ist offen. Tippen Sie ein Zeichen, um etwas vorzuschlagen.',
  nothingToWatch: 'Nichts zu beachten.',
  noNote: 'Keine Note ist in der Hand. Tippen Sie auf eine Note, oder drücken Sie eine Pfeiltaste.',
  noSlip: 'Hier liegt kein Zettel. Tippen Sie Zeichen, dann legt Eingabe einen hin.',
  nowVote: (slip) => `${slip} liegt offen. Jetzt Ihre Stimme.`,
  nothingToTakeBack: 'Nichts zurückzunehmen.',
  measureGone: (said) => `Diese Stimme hat keinen Takt ${said}. Tippen Sie eine gedruckte Zahl oder einen Probenbuchstaben.`,
  lifted: 'Die Stimme ist zum Drucken abgeschlossen. Die Bibliothek kann sie wieder öffnen.',
  done: 'Kein Takt offen, nichts zu beachten.',
  seatOf: (what) => `Gezeigt: ${what}`,
  onlySection: 'Sie sitzen nicht in dieser Gruppe: Sie können lesen, nicht eintragen.',
  onlyPrincipal: 'Nur die Stimmführung schreibt fest. Stimmen Sie mit + und − ab, oder sagen Sie mit s etwas.',
  changeFirst: 'Auf dieser Note steht kein Bogenwechsel im Bleistift, der sich verschieben ließe. c schreibt einen.',
  historyOn: 'Was beiseite gelegt oder ersetzt wurde, steht durchgestrichen da. i verbirgt es.',
  historyOff: 'Was beiseite gelegt wurde, ist wieder verborgen.',
  nothingHere: 'Auf dieser Note steht nichts, was auszuradieren wäre.',
  laid: (n) => `${marks(n)} unter die Stimme gelegt; die Gruppe sieht sie.`,
  inked: (n) => `${marks(n)} festgeschrieben.`,
  notYours: 'Dieser Zettel gehört jemand anderem. Stimmen Sie dagegen, oder legen Sie einen eigenen.',
} satisfies Words['stand'];

/** The line to write on. */
export const line = {
  why: 'Warum, in einem Satz',
  whyHint: 'Ein Satz, den die Gruppe liest',
  words: 'Worte über der Note',
  goTo: 'Zu Takt',
  say: (where) => `Etwas sagen zu ${where}`,
  aside: (slip) => `Warum ${slip} beiseite gelegt wird`,
  mute: 'Warum das hier nicht zu beachten ist',
  lay: 'Zettel hinlegen',
  ink: 'festschreiben',
  write: 'schreiben',
  go: 'los',
  speak: 'sagen',
  put: 'beiseite legen',
  rest: 'zur Ruhe legen',
  leave: 'lassen',
} satisfies Words['line'];

/** A slip and what becomes of it. */
export const slip = {
  for: 'dafür',
  against: 'dagegen',
  notYet: 'noch nicht',
  votes: (plus, minus, of) => `${plus} dafür, ${minus} dagegen, ${Math.max(0, of - plus - minus)} noch nicht`,
  label: (name, who) => `Zettel ${name} von ${who}`,
  inkIn: 'festschreiben',
  setAside: 'beiseite legen',
  takeBack: 'zurücknehmen',
  change: 'neu schreiben',
  say: 'etwas sagen',
  settle: 'erledigen',
  settled: (who) => `erledigt von ${who}`,
  covers: (where) => `gilt für ${where}`,
  noneOpen: 'Unter diesem Takt hängt kein Zettel.',
  wouldWatch: 'Zu beachten, wenn festgeschrieben:',
  history: 'Was hier geschah',
  adopted: (who, at) => `festgeschrieben von ${who}, ${day(at)}`,
  aside: (who, at) => `beiseite gelegt von ${who}, ${day(at)}`,
  withdrawn: (who, at) => `zurückgenommen von ${who}, ${day(at)}`,
  stands: (what, seats) => `${what}, ${seats}`,
  replaced: (who, at) => `ersetzt von ${who}, ${day(at)}`,
  muted: (who) => `zur Ruhe gelegt von ${who}`,
  wake: 'wieder beachten',
  rest: 'zur Ruhe legen',
  watch: 'Zu beachten',
  goesTo: 'Gespräch',
  next: 'nächster Zettel',
} satisfies Words['slip'];

/** Fingerings under a passage. */
export const offers = {
  title: (where) => `Fingersätze für ${where}`,
  aim: 'Worauf es hier am meisten ankommt',
  aims: { usual: 'wie die meisten spielen', smoothest: 'die glatteste Linie', secure: 'der sicherste', 'one-colour': 'eine Farbe', brightest: 'hell und offen', 'smallest-stretch': 'die kleinste Streckung' },
  by: { engine: 'ausgerechnet', section: 'wie die Gruppe ihn hat', print: 'wie gedruckt' },
  label: (letter) => `Fingersatz ${letter}`,
  facts: (shifts, widest, heard, alone) =>
    [
      capital(count(shifts, 'Lagenwechsel')),
      widest ? `weiteste ${widest.fingers.join('-')}: ${Math.round(widest.mm)} mm, ${ZONES[widest.zone] ?? widest.zone}` : 'keine Streckung',
      heard || alone ? `hörbares Gleiten: ${heard} in der Gruppe, ${alone} allein` : 'kein Gleiten zu hören',
    ].join(' · '),
  picture: (name) => `${name}, die Hand im Verlauf.`,
  position: (position) => (Number.isInteger(position) ? ROMAN[position]! : `${ROMAN[Math.floor(position)]!}½`),
  take: 'in den Bleistift nehmen',
  look: 'ansehen',
  steps: 'Note für Note',
  costs: (cost, over) => `Was er kostet: ${comma(cost.toFixed(2))}, ${over > 0 ? `${comma(over.toFixed(2))} mehr als der günstigste von diesen` : 'am wenigsten von diesen'}`,
  working: 'Fingersätze werden gesucht. Jede Taste geht weiter; Esc bricht ab.',
  failed: 'Hier ließ sich kein Fingersatz finden. Wählen Sie eine andere Stelle, oder bezeichnen Sie von Hand; Ihre Einträge bleiben.',
  elsewhere: 'Von dieser Stelle wird in dieser Zeile nichts gespielt; die Pfeile führen weiter.',
  taken: (letter, n) => `Fingersatz ${letter} steht im Bleistift: ${count(n, 'Zeichen')}. Eingabe legt ihn als Zettel hin, z nimmt ihn zurück.`,
} satisfies Words['offers'];

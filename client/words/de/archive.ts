import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count, measures } from './german.ts';

const marks = (n: number): string => count(n, 'Zeichen');
const slips = (n: number): string => count(n, 'Zettel');
const sets = (n: number): string => capital(count(n, 'Satz Zeichen', 'Sätze Zeichen'));

export const archive = {
  middle: 'aufgehobene Zeichen, Spielzeit um Spielzeit',
  link: 'Das Archiv: Zeichen früherer Spielzeiten',
  where: (n) => (n ? `${sets(n)} im Archiv.` : 'Noch ist nichts aufgehoben.'),
  sub: 'Esc: zurück zum Regal',
  none: 'In der Mappe werden die Zeichen eines Werks aufgehoben, mit Ensemble, Dirigent und Spielzeit. Dann stehen sie hier und werden angeboten, wenn das Werk wieder ins Regal kommt.',
  under: (when, conductor, ensemble) => `${when}, unter ${conductor}, ${ensemble}`,
  keptBy: (who, day) => `aufgehoben von ${who}, ${day}`,
  part: (name, n) => `${name}: ${marks(n)}`,
  all: 'das ganze Archiv mitnehmen',
  takeIn: 'ein Archiv hereinnehmen',
  reading: 'Das Archiv wird gelesen und geprüft.',
  takenIn: (added, known) => `${sets(added)} hereingenommen${known ? `; ${known} waren schon da` : ''}.`,
} satisfies Words['archive'];

export const reuse = {
  title: (work) => `${work} von Spielzeit zu Spielzeit`,
  fetched: 'Das Archiv wird durchgesehen.',
  nothing: 'Das Archiv hat für dieses Werk keine Zeichen.',
  offer: (when, conductor) => `Striche von ${when} unter ${conductor}`,
  byMusic: (title) => `dieselbe Musik, dort ${title} genannt`,
  asSlips: 'als Zettel hinlegen',
  asInk: 'festschreiben',
  working: 'Die Zeichen werden Note für Note hingelegt.',
  brought: (part, laid, inked, left) => `${part}: ${laid ? `${slips(laid)} hingelegt${inked ? `, ${inked} festgeschrieben` : ''}` : 'nichts hingelegt'}${left ? `; ${marks(left)} weggelassen, ihre Musik steht hier nicht` : ''}.`,
  nothingBrought: 'Keine Stimme dieses Werks hat dieselbe Musik.',
  putBy: 'Diese Zeichen aufheben',
  ensemble: 'Ensemble',
  conductor: 'Dirigent',
  season: 'Spielzeit',
  put: 'aufheben',
  kept: (when) => `Die Zeichen sind aufgehoben als ${when}. Sie werden angeboten, wenn dieses Werk wieder ins Regal kommt.`,
  travel: (part) => `Die Striche von ${part} zu allen tragen, die dasselbe spielen`,
  travelLook: 'nachsehen, wer das spielt',
  travelNone: 'Niemand sonst spielt diese Musik, oder alle streichen schon gleich.',
  passage: (section, where, n) => `${section}, ${where}: ${marks(n)}`,
  likeness: { unison: 'dieselben Noten', rhythm: 'derselbe Rhythmus' },
  send: (n) => (n === 1 ? 'den Zettel der Stimmführung hinlegen' : `${slips(n)} den Stimmführungen hinlegen`),
  misprints: 'Falsche Noten der Ausgabe',
  misprintsNone: 'Noch hat niemand eine falsche Note gefunden. Am Notenpult hat ein offener Takt eine Zeile dafür.',
  misprint: (part, where, says, should) => `${part}, ${where}: es steht ${says}, richtig ist ${should}`,
  foundBy: (who, day) => `${who}, ${day}`,
  putRight: 'in der Ausgabe berichtigt',
  list: 'die Liste',
  erase: 'Auszuradieren vor der Rückgabe',
  earlier: 'Frühere Stände',
} satisfies Words['reuse'];

export const misprint = {
  title: 'Eine falsche Note in der Ausgabe',
  says: 'Es steht',
  should: 'Richtig ist',
  write: 'aufschreiben',
  written: (measure) => `Die falsche Note in ${measures(measure)} steht auf der Liste der Bibliothek.`,
} satisfies Words['misprint'];

export const revisions = {
  middle: (work) => `${work}, Stand für Stand`,
  fetched: 'Die Stände der Stimme werden geholt.',
  first: 'die Stimme, wie sie kam',
  kinds: { inked: 'festgeschrieben', restored: 'zu früheren Zeichen zurück', stage: 'weitergegeben', edition: 'eine berichtigte Ausgabe darübergelegt' },
  in: (where, more) => `${measures(where)}${more ? ` und ${more} weitere` : ''}`,
  list: 'Alle Stände',
  picture: (n) => `${capital(count(n, 'Stand', 'Stände'))} von links nach rechts; die beiden verglichenen stehen in Klammern.`,
  before: 'vorher',
  after: 'nachher',
  choose: (what, which) => `${what}: ${which}`,
  sum: (changes, n) => (changes ? `${capital(marks(changes))} ${changes === 1 ? 'ist' : 'sind'} anders, in ${n === 1 ? 'einem Takt' : `${n} Takten`}.` : 'Nichts ist anders.'),
  sub: 'Pfeile: nachher · Umschalt und Pfeile: vorher · Strg P: Änderungszettel auf Papier · Esc: zum Notenpult',
  none: 'Zwischen diesen beiden Ständen ist kein Zeichen anders.',
  added: (what, seats) => `neu: ${what}${seats ? `, ${seats}` : ''}`,
  rubbedOut: (what, seats) => `fort: ${what}${seats ? `, ${seats}` : ''}`,
  changed: (before, after, seats) => `${after} statt ${before}${seats ? `, ${seats}` : ''}`,
  back: (state) => `Zurück zu den Zeichen von: ${state}`,
  why: 'Warum',
  goBack: 'zurückgehen',
  gone: 'Diese Zeichen gelten wieder. Was statt ihrer stand, ist beiseite gelegt und bleibt lesbar.',
  onlyPrincipal: 'Nur die Stimmführung geht zu früheren Zeichen zurück.',
  print: 'Änderungszettel auf Papier',
  slips: (part) => `Änderungszettel für ${part}`,
} satisfies Words['revisions'];

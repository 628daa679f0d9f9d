import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

const marks = (n: number): string => count(n, 'segno', 'segni');
const slips = (n: number): string => count(n, 'striscia', 'strisce', 'una');
const sets = (n: number): string => capital(count(n, 'serie di segni', 'serie di segni', 'una'));

export const archive = {
  middle: 'segni conservati, stagione dopo stagione',
  link: 'L’archivio storico: segni delle stagioni passate',
  where: (n) => (n ? `${sets(n)} nell’archivio storico.` : 'Non è ancora conservato nulla.'),
  sub: 'Esc: allo scaffale',
  none: 'Nella Cartella i segni di un’opera si conservano con complesso, direttore e stagione. Allora stanno qui, e vengono offerti quando l’opera torna sullo scaffale.',
  under: (when, conductor, ensemble) => `${when}, con ${conductor}, ${ensemble}`,
  keptBy: (who, day) => `conservato da ${who}, ${day}`,
  part: (name, n) => `${name}: ${marks(n)}`,
  all: 'portare via tutto l’archivio storico',
  takeIn: 'ricevere un archivio storico',
  reading: 'L’archivio storico viene letto e provato.',
  takenIn: (added, known) => `${sets(added)} in più${known ? `; ${known} c’erano già` : ''}.`,
} satisfies Words['archive'];

export const reuse = {
  title: (work) => `${work} di stagione in stagione`,
  fetched: 'Si cerca nell’archivio storico.',
  nothing: 'L’archivio storico non ha segni per quest’opera.',
  offer: (when, conductor) => `Arcate di ${when} con ${conductor}`,
  byMusic: (title) => `la stessa musica, là chiamata ${title}`,
  asSlips: 'posarli come strisce',
  asInk: 'fissarli a penna',
  working: 'I segni vengono posati nota per nota.',
  brought: (part, laid, inked, left) => `${part}: ${laid ? `${slips(laid)} ${laid === 1 ? 'posata' : 'posate'}${inked ? `, ${inked} a penna` : ''}` : 'nulla di posato'}${left ? `; ${marks(left)} ${left === 1 ? 'lasciato' : 'lasciati'}, la loro musica non è qui` : ''}.`,
  nothingBrought: 'Nessuna parte di quest’opera ha la stessa musica.',
  putBy: 'Conservare questi segni',
  ensemble: 'Complesso',
  conductor: 'Direttore',
  season: 'Stagione',
  put: 'conservare',
  kept: (when) => `I segni sono conservati come ${when}. Saranno offerti quando quest’opera torna sullo scaffale.`,
  travel: (part) => `Portare le arcate di ${part} a chi suona lo stesso`,
  travelLook: 'guardare chi lo suona',
  travelNone: 'Nessun altro suona questa musica, o tutti hanno già le stesse arcate.',
  passage: (section, where, n) => `${section}, ${where}: ${marks(n)}`,
  likeness: { unison: 'le stesse note', rhythm: 'lo stesso ritmo' },
  send: (n) => (n === 1 ? 'posare la striscia dalla sua prima parte' : `posare ${slips(n)} dalle loro prime parti`),
  misprints: 'Note sbagliate dell’edizione',
  misprintsNone: 'Nessuno ha trovato una nota sbagliata. Sul leggio una battuta aperta ha una riga per questo.',
  misprint: (part, where, says, should) => `${part}, ${where}: c’è ${says}, deve essere ${should}`,
  foundBy: (who, day) => `${who}, ${day}`,
  putRight: 'corretto nell’edizione',
  list: 'l’elenco',
  erase: 'Da cancellare prima di rendere',
  earlier: 'Stati precedenti',
} satisfies Words['reuse'];

export const misprint = {
  title: 'Una nota sbagliata nell’edizione',
  says: 'C’è',
  should: 'Deve essere',
  write: 'annotarla',
  written: (measure) => `La nota sbagliata di battuta ${measure} è nell’elenco dell’archivista.`,
} satisfies Words['misprint'];

export const revisions = {
  middle: (work) => `${work}, stato per stato`,
  fetched: 'Si vanno a prendere gli stati della parte.',
  first: 'la parte come è arrivata',
  kinds: { inked: 'fissato a penna', restored: 'ritorno a segni precedenti', stage: 'passata avanti', edition: 'posata sopra un’edizione corretta' },
  in: (where, more) => `${more || where.includes(',') ? 'battute' : 'battuta'} ${where}${more ? ` e altre ${more}` : ''}`,
  list: 'Tutti gli stati',
  picture: (n) => `${capital(count(n, 'stato', 'stati', 'uno'))} da sinistra a destra; i due a confronto stanno tra parentesi.`,
  before: 'prima',
  after: 'dopo',
  choose: (what, which) => `${what}: ${which}`,
  sum: (changes, n) => (changes ? `${capital(marks(changes))} ${changes === 1 ? 'diverso' : 'diversi'}, in ${count(n, 'battuta', 'battute', 'una')}.` : 'Nulla è diverso.'),
  sub: 'frecce: dopo · Maiusc e frecce: prima · Ctrl P: strisce su carta · Esc: al leggio',
  none: 'Tra questi due stati nessun segno è diverso.',
  added: (what, seats) => `nuovo: ${what}${seats ? `, ${seats}` : ''}`,
  rubbedOut: (what, seats) => `via: ${what}${seats ? `, ${seats}` : ''}`,
  changed: (before, after, seats) => `${after} invece di ${before}${seats ? `, ${seats}` : ''}`,
  back: (state) => `Tornare ai segni di: ${state}`,
  why: 'Perché',
  goBack: 'tornare',
  gone: 'Questi segni valgono di nuovo. Ciò che stava al loro posto è accantonato e resta leggibile.',
  onlyPrincipal: 'Solo la prima parte torna a segni precedenti.',
  print: 'strisce su carta',
  slips: (part) => `Strisce per ${part}`,
} satisfies Words['revisions'];

import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, day } from './italian.ts';

const ROMAN = ['½', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII', 'XIII', 'XIV', 'XV', 'XVI', 'XVII', 'XVIII', 'XIX', 'XX', 'XXI', 'XXII', 'XXIII', 'XXIV'];
const ZONES: Readonly<Record<string, string>> = { comfortable: 'comoda', stretched: 'estesa', exceptional: 'eccezionale' };

const marks = (n: number): string => count(n, 'segno', 'segni');

/** Signs that can be written. */
export const signs = {
  label: 'Segni',
  finger: (n) => (n === '0' ? 'corda vuota' : n === 'thumb' ? 'pollice' : `${n}º dito`),
  string: (roman) => `corda ${roman}`,
  down: 'arcata in giù',
  up: 'arcata in su',
  change: 'cambio d’arco',
  reach: 'mano: estensione, contrazione, nessuna',
  harmonic: 'armonico',
  retake: 'ripresa d’arco',
  hooked: 'nella stessa arcata',
  split: 'dividere la legatura',
  join: 'unire la legatura',
  substitution: 'il dito seguente prende il posto sulla nota',
  words: 'parole',
  rub: 'cancellare',
  undo: 'annullare',
  more: 'altri segni',
  short: { undo: 'annulla', rub: 'cancella', more: 'altri' },
} satisfies Words['signs'];

/** Sentences on the stand. */
export const stand = {
  draft: (n, where) => `${capital(marks(n))} a matita a ${where}.`,
  nothingOpen: 'Nessuna battuta è aperta. Batta un segno per proporre qualcosa.',
  nothingToWatch: 'Nulla a cui badare.',
  noNote: 'Nessuna nota in mano. Tocchi una nota, o prema una freccia.',
  noSlip: 'Qui non c’è una striscia. Batta dei segni, poi Invio ne posa una.',
  nowVote: (slip) => `${slip} è aperto. Ora il suo voto.`,
  nothingToTakeBack: 'Nulla da riprendere.',
  measureGone: (said) => `Questa parte non ha una battuta ${said}. Batta un numero stampato o una lettera di richiamo.`,
  lifted: 'La parte è chiusa per la stampa. L’archivista può riaprirla.',
  done: 'Nessuna battuta aperta, nulla a cui badare.',
  seatOf: (what) => `Mostrato: ${what}`,
  onlySection: 'Non siede in questa sezione: può leggere, non segnare.',
  onlyPrincipal: 'Solo la prima parte fissa a penna. Voti con + e −, o dica qualcosa con s.',
  changeFirst: 'Su questa nota non c’è un cambio d’arco a matita da spostare. c ne scrive uno.',
  historyOn: 'Ciò che è stato accantonato o sostituito si vede barrato. i lo nasconde.',
  historyOff: 'Ciò che è stato accantonato è di nuovo nascosto.',
  nothingHere: 'Su questa nota non c’è nulla da cancellare.',
  laid: (n) => `Sotto la parte, perché la sezione veda: ${marks(n)}.`,
  inked: (n) => `A penna: ${marks(n)}.`,
  notYours: 'Questa striscia è di qualcun altro. Voti contro, o ne posi una Sua.',
} satisfies Words['stand'];

/** The line to write on. */
export const line = {
  why: 'Perché, in una frase',
  whyHint: 'Una frase che la sezione leggerà',
  words: 'Parole sopra la nota',
  goTo: 'Andare a battuta',
  say: (where) => `Dire qualcosa su ${where}`,
  aside: (slip) => `Perché si accantona ${slip}`,
  mute: 'Perché qui non occorre badarci',
  lay: 'posare la striscia',
  ink: 'fissare a penna',
  write: 'scrivere',
  go: 'andare',
  speak: 'dirlo',
  put: 'accantonare',
  rest: 'mettere a riposo',
  leave: 'lasciare',
} satisfies Words['line'];

/** A slip and what becomes of it. */
export const slip = {
  for: 'a favore',
  against: 'contro',
  notYet: 'non ancora',
  votes: (plus, minus, of) => `${plus} a favore, ${minus} contro, ${Math.max(0, of - plus - minus)} non ancora`,
  label: (name, who) => `Striscia ${name} di ${who}`,
  inkIn: 'fissare a penna',
  setAside: 'accantonare',
  takeBack: 'riprendere',
  change: 'riscrivere',
  say: 'dire qualcosa',
  settle: 'concludere',
  settled: (who) => `concluso da ${who}`,
  covers: (where) => `vale per ${where}`,
  noneOpen: 'Sotto questa battuta non c’è nessuna striscia.',
  wouldWatch: 'A cui badare se si fissa a penna:',
  history: 'Che cosa è successo qui',
  adopted: (who, at) => `fissata a penna da ${who}, ${day(at)}`,
  aside: (who, at) => `accantonata da ${who}, ${day(at)}`,
  withdrawn: (who, at) => `ripresa da ${who}, ${day(at)}`,
  stands: (what, seats) => `${what}, ${seats}`,
  replaced: (who, at) => `sostituito da ${who}, ${day(at)}`,
  muted: (who) => `messo a riposo da ${who}`,
  wake: 'badarci di nuovo',
  rest: 'mettere a riposo',
  watch: 'A cui badare',
  goesTo: 'discorso',
  next: 'striscia seguente',
} satisfies Words['slip'];

/** Fingerings under a passage. */
export const offers = {
  title: (where) => `Diteggiature per ${where}`,
  aim: 'Che cosa conta di più qui',
  aims: { usual: 'come suonerebbero i più', smoothest: 'la linea più legata', secure: 'la più sicura', 'one-colour': 'un solo colore', brightest: 'chiaro e aperto', 'smallest-stretch': 'l’apertura più piccola' },
  by: { engine: 'calcolata', section: 'come l’ha la sezione', print: 'come stampata' },
  label: (letter) => `Diteggiatura ${letter}`,
  facts: (shifts, widest, heard, alone) =>
    [
      capital(count(shifts, 'cambio di posizione', 'cambi di posizione')),
      widest ? `apertura maggiore ${widest.fingers.join('-')}: ${Math.round(widest.mm)} mm, ${ZONES[widest.zone] ?? widest.zone}` : 'nessuna apertura',
      heard || alone ? `scivolamenti che si sentono: ${heard} nella sezione, ${alone} da soli` : 'non si sente nessuno scivolamento',
    ].join(' · '),
  picture: (name) => `${name}, la mano nel tempo.`,
  position: (position) => (Number.isInteger(position) ? ROMAN[position]! : `${ROMAN[Math.floor(position)]!}½`),
  take: 'prendere a matita',
  look: 'guardare',
  steps: 'Nota per nota',
  costs: (cost, over) => `Quanto costa: ${comma(cost.toFixed(2))}, ${over > 0 ? `${comma(over.toFixed(2))} più della meno costosa di queste` : 'la meno costosa di queste'}`,
  working: 'Si cercano diteggiature. Un tasto qualsiasi prosegue; Esc lascia.',
  failed: 'Qui non è stato possibile trovare una diteggiatura. Scelga un altro passo, o lo segni a mano; i Suoi segni restano.',
  elsewhere: 'Nulla di questo passo si suona in questa riga; le frecce portano avanti.',
  taken: (letter, n) => `La diteggiatura ${letter} è a matita: ${marks(n)}. Invio la posa come striscia, z la annulla.`,
} satisfies Words['offers'];

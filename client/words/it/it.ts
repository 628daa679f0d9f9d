import type { Stage } from '../../../core/agreement/state.ts';
import { anywhere } from './anywhere.ts';
import { archive, misprint, reuse, revisions } from './archive.ts';
import { changed } from './changed.ts';
import { view } from './view.ts';
import type { Words } from '../en.ts';
import { beside, hair, plan } from './bowing.ts';
import { count, day, ordinal } from './italian.ts';
import { fact } from './fact.ts';
import { findings } from './findings.ts';
import { going } from './going.ts';
import { hearing } from './hearing.ts';
import { keys, tools } from './keys.ts';
import { folder, score, section, shelf } from './library.ts';
import { mine, people, trail } from './people.ts';
import { season } from './season.ts';
import { marks, pitch } from './marks.ts';
import { board, compare, past } from './pictures.ts';
import { imports } from './imports.ts';
import { piece } from './piece.ts';
import { prints } from './prints.ts';
import { refusals } from './refusals.ts';
import { rulePages } from './rulePages.ts';
import { rules } from './rules.ts';
import { hand, settled } from './settled.ts';
import { line, offers, signs, slip, stand } from './stand.ts';
import { invitations, mySignIn, signIn } from './signIn.ts';
import { spoken } from './spoken.ts';
import { touch } from './touch.ts';
import { elsewhere, letters, named, notices, run, waits } from './together.ts';

const STAGES: Record<Stage, string> = {
  pulled: 'prelevata',
  withPrincipal: 'dalla prima parte',
  roundSection: 'in giro per la sezione',
  inkedIn: 'fissata a penna',
  printed: 'stampata',
  onStands: 'sui leggii',
};


/** Every word of the screens in Italian, as an orchestra speaks it, with Lei. */
export const it = {
  name: 'Bowline',
  language: 'Lingua',
  day,
  marks,
  pitch,
  unpitched: 'senza altezza',
  technical: { fingering: 'dito', string: 'corda', 'up-bow': 'arcata in su', 'down-bow': 'arcata in giù', 'open-string': 'corda vuota', harmonic: 'armonico', 'thumb-position': 'capotasto', stopped: 'chiuso', 'snap-pizzicato': 'pizzicato alla Bartók' } as Readonly<Record<string, string>>,
  findings,
  rulePages,
  fact,
  refusals,
  trouble: {
    noLine: 'Nessuna linea con l’archivio. Guardi se la rete c’è, poi riprovi.',
    noWord: (status) => `L’archivio non ha risposto come doveva (${status}). Riprovi, o lo dica all’archivista.`,
    line: (n) => `riga ${n}`,
    part: (name) => `parte ${name}`,
    measure: (number) => `battuta ${number}`,
    where: (where) => `Dove: ${where}.`,
    say: (incident) => `Da dire all’archivista: ${incident}.`,
  },
  places: { label: 'Luoghi', shelf: 'Scaffale', folder: 'Cartella', stand: 'Leggio', section: 'Sezione', rules: 'Regole', revisions: 'Stati precedenti', archive: 'Archivio storico', changed: 'Che cosa è cambiato' },
  rules,
  changed,
  stages: STAGES,
  signIn,
  mySignIn,
  invitations,
  pencils: { label: 'In mano', propose: 'proporre', alone: 'solo per me', ink: 'fissare a penna' },
  signs,
  seat: {
    all: marks.everyone,
    forSome: (seats) => `per ${seats}`,
    one: (seat) => marks.seat(seat.slice(0, -1), seat.endsWith('o')),
    short: 'tutti',
    choose: 'Per chi',
  },
  here: (n, of) => `${n} di ${of} qui`,
  measure: (number) => `Battuta ${number}`,
  measures: (from, to) => (from === to ? `Battuta ${from}` : `Battute da ${from} a ${to}`),
  inMeasures: (from, to) => (from === to ? `battuta ${from}` : `battute da ${from} a ${to}`),
  note: (position, pitch) => `${ordinal(position)} nota, ${pitch}`,
  passage: (n) => `${count(n, 'nota', 'note', 'una')} in mano`,
  printed: (what) => `stampato ${what}`,
  pencilled: (what) => `a matita ${what}`,
  alone: (what) => `solo per me ${what}`,
  staff: { empty: 'Posi una parte sul leggio', label: (from, to) => `Battute da ${from} a ${to}, incise, con i segni della sezione` },
  engraving: (drawn, of) => `Si incide la riga ${drawn} di ${of}.`,
  engravingSub: 'Può già segnare ciò che c’è.',
  partComes: 'Si va a prendere la parte.',
  engravingFailed: 'Non è stato possibile incidere questa parte. Ricarichi la pagina; i segni restano.',
  stand,
  line,
  slip,
  offers,
  hair,
  board,
  compare,
  past,
  hearing,
  spoken,
  touch,
  beside,
  thread: (measures, open, watch) => `Tutta la parte: battute da 1 a ${measures}, ${open} aperte, ${watch} a cui badare`,
  going,
  anywhere,
  view,
  refusedSub: 'Ciò che non è stato preso è barrato e se ne va con il prossimo tasto.',
  renewed: 'La parte sul leggio è stata sostituita.',
  checkerStopped: 'Gli occhiali si sono fermati. I Suoi segni restano; ricarichi la pagina, o continui senza.',
  shelf,
  hand,
  settled,
  score,
  folder,
  season,
  section,
  plan,
  imports,
  piece,
  prints,
  archive,
  reuse,
  misprint,
  revisions,
  people,
  mine,
  trail,
  run,
  elsewhere,
  named,
  waits,
  notices,
  letters,
  keys,
  tools,
} satisfies Words;

import type { Stage } from '../../../core/agreement/state.ts';
import { anywhere } from './anywhere.ts';
import { archive, misprint, reuse, revisions } from './archive.ts';
import { changed } from './changed.ts';
import { view } from './view.ts';
import type { Words } from '../en.ts';
import { beside, hair, plan } from './bowing.ts';
import { count, day, ordinal } from './french.ts';
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
  pulled: 'sortie',
  withPrincipal: 'chez le chef de pupitre',
  roundSection: 'dans le pupitre',
  inkedIn: 'à l’encre',
  printed: 'imprimée',
  onStands: 'sur les lutrins',
};


/** Every word of the screens in French, as an orchestra speaks it, with vous. */
export const fr = {
  name: 'Bowline',
  language: 'Langue',
  day,
  marks,
  pitch,
  unpitched: 'sans hauteur',
  technical: { fingering: 'doigt', string: 'corde', 'up-bow': 'poussé', 'down-bow': 'tiré', 'open-string': 'corde à vide', harmonic: 'harmonique', 'thumb-position': 'pouce', stopped: 'bouché', 'snap-pizzicato': 'pizzicato Bartók' } as Readonly<Record<string, string>>,
  findings,
  rulePages,
  fact,
  refusals,
  trouble: {
    noLine: 'Pas de liaison avec la bibliothèque. Voyez si le réseau est là, puis essayez de nouveau.',
    noWord: (status) => `La bibliothèque n’a pas répondu comme elle le devrait (${status}). Essayez de nouveau, ou dites-le au bibliothécaire.`,
    line: (n) => `ligne ${n}`,
    part: (name) => `partie ${name}`,
    measure: (number) => `mesure ${number}`,
    where: (where) => `Où : ${where}.`,
    say: (incident) => `À dire au bibliothécaire : ${incident}.`,
  },
  places: { label: 'Lieux', shelf: 'Rayon', folder: 'Pochette', stand: 'Lutrin', section: 'Pupitre', rules: 'Règles', revisions: 'États antérieurs', archive: 'Archives', changed: 'Ce qui a changé' },
  rules,
  changed,
  stages: STAGES,
  signIn,
  mySignIn,
  invitations,
  pencils: { label: 'En main', propose: 'proposer', alone: 'pour moi seul', ink: 'fixer à l’encre' },
  signs,
  seat: {
    all: marks.everyone,
    forSome: (seats) => `pour ${seats}`,
    one: (seat) => marks.seat(seat.slice(0, -1), seat.endsWith('o')),
    short: 'tous',
    choose: 'Pour qui',
  },
  here: (n, of) => `${n} sur ${of} ici`,
  measure: (number) => `Mesure ${number}`,
  measures: (from, to) => (from === to ? `Mesure ${from}` : `Mesures ${from} à ${to}`),
  inMeasures: (from, to) => (from === to ? `la mesure ${from}` : `les mesures ${from} à ${to}`),
  note: (position, pitch) => `${ordinal(position)} note, ${pitch}`,
  passage: (n) => `${count(n, 'note', 'notes', 'une')} en main`,
  printed: (what) => `imprimé ${what}`,
  pencilled: (what) => `au crayon ${what}`,
  alone: (what) => `pour moi seul ${what}`,
  staff: { empty: 'Posez une partie sur le lutrin', label: (from, to) => `Mesures ${from} à ${to}, gravées, avec les indications du pupitre` },
  engraving: (drawn, of) => `Gravure de la ligne ${drawn} sur ${of}.`,
  engravingSub: 'Vous pouvez déjà noter ce qui est là.',
  partComes: 'On va chercher la partie.',
  engravingFailed: 'Cette partie n’a pas pu être gravée. Chargez de nouveau la page ; les indications sont gardées.',
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
  thread: (measures, open, watch) => `Toute la partie : mesures 1 à ${measures}, ${open} ouvertes, ${watch} à surveiller`,
  going,
  anywhere,
  view,
  refusedSub: 'Ce qui n’a pas été pris est barré et disparaît à la prochaine touche.',
  renewed: 'La partie sur le lutrin a été échangée.',
  checkerStopped: 'Les lunettes se sont arrêtées. Vos indications sont gardées ; chargez de nouveau la page, ou continuez sans elles.',
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

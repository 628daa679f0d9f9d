import type { Stage } from '../../../core/agreement/state.ts';
import type { Words } from '../en.ts';
import { anywhere } from './anywhere.ts';
import { archive, misprint, reuse, revisions } from './archive.ts';
import { changed } from './changed.ts';
import { view } from './view.ts';
import { beside, hair, plan } from './bowing.ts';
import { fact } from './fact.ts';
import { findings } from './findings.ts';
import { count, day, ordinal } from './german.ts';
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
  pulled: 'herausgesucht',
  withPrincipal: 'bei der Stimmführung',
  roundSection: 'in der Gruppe',
  inkedIn: 'festgeschrieben',
  printed: 'gedruckt',
  onStands: 'auf den Pulten',
};

/** Every word of the screens in German, as an orchestra speaks it, with Sie. */
export const de = {
  name: 'Bowline',
  language: 'Sprache',
  day,
  marks,
  pitch,
  unpitched: 'ohne Tonhöhe',
  technical: {
    fingering: 'Finger', string: 'Saite', 'up-bow': 'Aufstrich', 'down-bow': 'Abstrich', 'open-string': 'leere Saite', harmonic: 'Flageolett', 'thumb-position': 'Daumenaufsatz', stopped: 'gestopft', 'snap-pizzicato': 'Bartók-Pizzicato',
  } as Readonly<Record<string, string>>,
  findings,
  rulePages,
  fact,
  refusals,
  trouble: {
    noLine: 'Keine Leitung zur Bibliothek. Sehen Sie nach, ob das Netz da ist, und versuchen Sie es noch einmal.',
    noWord: (status) => `Die Bibliothek hat nicht geantwortet, wie sie sollte (${status}). Versuchen Sie es noch einmal, oder sagen Sie es dort.`,
    line: (n) => `Zeile ${n}`,
    part: (name) => `Stimme ${name}`,
    measure: (number) => `Takt ${number}`,
    where: (where) => `Wo: ${where}.`,
    say: (incident) => `Nennen Sie der Bibliothek: ${incident}.`,
  },
  places: { label: 'Orte', shelf: 'Regal', folder: 'Mappe', stand: 'Notenpult', section: 'Gruppe', rules: 'Regeln', revisions: 'Frühere Stände', archive: 'Archiv', changed: 'Was anders ist' },
  rules,
  changed,
  stages: STAGES,
  signIn,
  mySignIn,
  invitations,
  pencils: { label: 'In der Hand', propose: 'vorschlagen', alone: 'nur für mich', ink: 'festschreiben' },
  signs,
  seat: {
    all: marks.everyone,
    forSome: (seats) => `für ${seats}`,
    one: (seat) => marks.seat(seat.slice(0, -1), seat.endsWith('o')),
    short: 'alle',
    choose: 'Für wen',
  },
  here: (n, of) => `${n} von ${of} da`,
  measure: (number) => `Takt ${number}`,
  measures: (from, to) => (from === to ? `Takt ${from}` : `Takt ${from} bis ${to}`),
  inMeasures: (from, to) => (from === to ? `Takt ${from}` : `Takt ${from} bis ${to}`),
  note: (position, pitch) => `${ordinal(position)} Note, ${pitch}`,
  passage: (n) => `${count(n, 'Note', 'Noten', 'eine')} in der Hand`,
  printed: (what) => `gedruckt ${what}`,
  pencilled: (what) => `mit Bleistift ${what}`,
  alone: (what) => `nur für mich ${what}`,
  staff: { empty: 'Legen Sie eine Stimme auf das Notenpult', label: (from, to) => `Takt ${from} bis ${to}, gestochen, mit den Einträgen der Gruppe` },
  engraving: (drawn, of) => `Zeile ${drawn} von ${of} wird gestochen.`,
  engravingSub: 'Was schon dasteht, können Sie bezeichnen.',
  partComes: 'Die Stimme wird geholt.',
  engravingFailed: 'Diese Stimme ließ sich nicht stechen. Laden Sie die Seite neu; die Einträge bleiben.',
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
  thread: (measures, open, watch) => `Die ganze Stimme: Takt 1 bis ${measures}, ${open} offen, ${watch} zu beachten`,
  going,
  anywhere,
  view,
  refusedSub: 'Was nicht angenommen wurde, ist durchgestrichen und geht mit der nächsten Taste.',
  renewed: 'Die Stimme auf dem Notenpult wurde ausgetauscht.',
  checkerStopped: 'Das Prüfen ist stehen geblieben. Ihre Einträge bleiben; laden Sie die Seite neu, oder schreiben Sie ohne es weiter.',
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

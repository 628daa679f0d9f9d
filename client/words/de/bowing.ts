import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, measures } from './german.ts';

const way = (direction: 'down' | 'up'): string => (direction === 'down' ? 'Abstrich' : 'Aufstrich');
const bows = (n: number): string => capital(count(n, 'Strich', 'Striche'));
const changes = (n: number): string => capital(count(n, 'Bogenwechsel'));
const players = (n: number): string => (n === 1 ? 'einem Spieler' : `${count(n, '', 'Spielern')}`);

/** The bow along its hair, other sections' bowings and plans of changes. */
export const hair = {
  title: (where) => `Der Bogen auf seinem Haar, ${where}`,
  frog: 'Frosch',
  point: 'Spitze',
  unit: 'mm',
  working: 'Die Striche werden auf das Haar verteilt. Jede Taste geht weiter.',
  failed: 'Der Bogen ließ sich hier nicht einteilen. Ihre Einträge bleiben; drücken Sie zweimal e, um es noch einmal zu versuchen.',
  off: 'den Bogen weglegen',
  none: 'In dieser Zeile wird nichts gestrichen.',
  bows: (n, measure, mm) => `${bows(n)}; der längste, in Takt ${measure}, braucht ${mm} mm Haar.`,
  lasts: 'Das Haar reicht überall.',
  'runs-out': (direction, measure, mm) => `Der ${way(direction)} ab Takt ${measure} reicht nicht: es fehlen ${mm} mm Haar.`,
  'wrong-end': (direction, measure, mm) => `Der ${way(direction)} ab Takt ${measure} beginnt am falschen Ende: bei gewohnter Geschwindigkeit fehlen ${mm} mm Haar.`,
  shared: (measure) => `Ab Takt ${measure} wechselt jeder Platz an eigener Stelle; der Pfeil nach unten führt zu einem Platz und seinem Bogen.`,
  split: 'Teilen Sie den Bindebogen, verteilen Sie die Wechsel, oder spielen Sie leiser oder schneller.',
  mend: (slower, faster) => `Es reicht, wenn ${[slower && `in ${measures(slower)} langsamer`, faster && `in ${measures(faster)} schneller`].filter(Boolean).join(' und ')} gestrichen wird.`,
  through: (first, last) => `${first} bis ${last}`,
  noMend: 'Teilen Sie einen Bindebogen oder setzen Sie vorher neu an.',
  table: 'Strich für Strich',
  columns: ['Takt', 'Strich', 'Vom Frosch', 'Geschwindigkeit', 'Warum so herum'],
  way: (from, to) => `${from} bis ${to} mm`,
  paces: { usual: 'gewohnt', faster: 'schneller als gewohnt', slower: 'langsamer als gewohnt' },
} satisfies Words['hair'];

export const beside = {
  title: (where) => `Wie die anderen Gruppen streichen, ${where}`,
  mine: (name) => `${name}, diese Stimme`,
  lane: (name, said) => `Striche von ${name}. ${said}`.trim(),
  working: 'Die Striche der anderen Gruppen werden gelesen. Jede Taste geht weiter.',
  failed: 'Die Striche der anderen Gruppen ließen sich nicht lesen. Ihre Einträge bleiben; drücken Sie zweimal y, um es noch einmal zu versuchen.',
  alone: 'Zu diesem Werk liegt keine andere Streicherstimme in der Mappe.',
  apart: 'Hier beginnt kein Strich zugleich mit einem von mir.',
  alike: (n) => `${bows(n)} ${n === 1 ? 'beginnt zugleich mit meinem und geht' : 'beginnen zugleich mit meinen und gehen'} in dieselbe Richtung.`,
  against: (n, other, where) =>
    n === 1 ? `Ein Strich beginnt zugleich mit meinem und geht in die andere Richtung, in ${measures(where)}.` : `${bows(n)} beginnen zugleich mit meinen; ${other === 1 ? 'einer davon geht' : `${count(other, 'davon', 'davon')} gehen`} in die andere Richtung, in ${measures(where)}.`,
  unison: (where) => `Dieselben Noten wie meine in ${where}.`,
  rhythm: (where) => `Mein Rhythmus mit anderen Noten in ${where}.`,
  legend: 'Feste Zeichen sind gedruckt oder eingetragen, die mit Bleistift erschlossen; ein Kreuz: gegen meinen.',
  again: 'Dieselbe Musik an anderer Stelle dieser Stimme',
  as: { unison: (where) => `dieselben Noten wie in ${where}.`, rhythm: (where) => `der Rhythmus von ${where}.` },
  take: 'diese Striche übernehmen',
  taken: (whose) => `Die Striche von ${whose} stehen im Bleistift. Eingabe legt sie als Zettel hin, z nimmt sie zurück.`,
  sameAlready: (whose) => `Von den Strichen von ${whose} ist hier nichts zu ergänzen.`,
  left: (n, why) => `Ausgelassen auf ${n === 1 ? 'einer Note' : count(n, '', 'Noten')}: ${why}`,
  off: 'die anderen weglegen',
} satisfies Words['beside'];

export const plan = {
  title: 'Ein Plan für die Bogenwechsel',
  form: 'Die Bogenwechsel einer Stelle verteilen',
  what: 'Bowline verteilt die Wechsel so, dass niemandem der Bogen ausgeht, Pultnachbarn getrennt wechseln und nur wenige zugleich. Es gilt nichts, bevor Sie es als Zettel hinlegen.',
  from: 'von Takt',
  to: 'bis Takt',
  ask: 'verteilen',
  again: 'neu planen',
  who: 'Wer spielt',
  noNotes: 'In diesen Takten ist nichts zu streichen. Wählen Sie andere.',
  working: (n) => `Die Wechsel werden unter ${players(n)} verteilt. Esc bricht ab.`,
  better: 'Dieser Plan gilt vorerst; ein besserer wird gesucht. Sie können ihn nehmen oder warten.',
  notYet: (where) => `Bisher hält kein Plan alle Regeln der Gruppe in ${where} ein. Der nächste verletzt:`,
  failed: 'Hier ließ sich kein Plan finden. Wählen Sie eine andere Stelle, oder tragen Sie die Wechsel auf dem Notenpult von Hand ein; was steht, bleibt.',
  oneBow: (where) => `Ein Bogen reicht durch ${where}: niemand muss wechseln.`,
  kept: (n, of, where, allowed, seconds) =>
    `${changes(n)} unter ${players(of)} in ${where}. Niemandem geht der Bogen aus, Pultnachbarn wechseln getrennt, und höchstens ${allowed} von ${of} innerhalb von ${comma(seconds)} s, wie die Gruppe es festgelegt hat.`,
  best: 'Kein Plan ist besser.',
  nearBest: 'Es kann einen besseren geben; gefunden wurde keiner.',
  cannot: (where) => `In ${where} lassen sich nicht alle Regeln der Gruppe einhalten. Das ist der nächste Plan; er verletzt:`,
  notFound: (where) => `Für ${where} wurde kein Plan gefunden, der alle Regeln der Gruppe einhält. Das ist der nächste; er verletzt:`,
  limit: (who, where, seconds) => `${who}: ein Bogen ab ${where} müsste ${comma(seconds)} s länger reichen, als er reicht.`,
  end: (who) => `${who}: der letzte Bogen geht anders, als die Musik danach es will.`,
  partners: (who, where, seconds) => `${who.join(' und ')} wechseln in ${where} ${seconds === '0' ? 'auf demselben Teil des Schlags' : `um ${comma(seconds)} s zu dicht hintereinander`}.`,
  crowd: (n, seconds, where, allowed) => `${capital(count(n, 'Spieler'))} ${n === 1 ? 'wechselt' : 'wechseln'} in ${where} innerhalb von ${comma(seconds)} s; erlaubt ${allowed === 1 ? 'ist einer' : `sind ${allowed}`}.`,
  more: (n) => `und ${n} weitere`,
  take: 'in den Bleistift nehmen',
  taken: (n) => `Der Plan steht im Bleistift: ${count(n, 'Zeichen')}. Eingabe legt ihn als Zettel hin, z nimmt ihn zurück.`,
  draftFirst: 'Im Bleistift stehen Zeichen. Legen Sie sie erst hin oder nehmen Sie sie zurück; dann verteilt v die Wechsel.',
  planned: (work, where) => `${work} · ein Plan, ${where}`,
  sub: (mayTake) => `Pfeile: Wechsel, Pult${mayTake ? ' · Eingabe: in den Bleistift nehmen' : ''} · Esc: verlassen`,
} satisfies Words['plan'];

import { HAND_IN_GERMAN } from '../../../core/fingering/words/german.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './german.ts';

/** Words of the pictures: the fingerboard, two fingerings side by side, the past of a measure. */
export const board = {
  title: (name) => `Die Hand auf dem Griffbrett, ${name}`,
  none: 'Setzen Sie das Kolophonium auf eine Note dieser Stelle, oder zeigen Sie auf eine; dann ist die Hand auf dem Griffbrett zu sehen.',
  thumb: 'der Daumenlage',
  string: (name) => `${name}-Saite`,
  open: (string, position, low, high) => `${string}, leer. Die Hand wartet in ${position}, von ${low} bis ${high} mm.`,
  stopped: (string, finger, mm, position, low, high) => `${string}, mit ${finger}, ${mm} mm vom Sattel; die Hand liegt in ${position}, von ${low} bis ${high} mm.`,
  reach: (mm) => `Der Finger liegt ${mm} mm außerhalb der Hand.`,
  unit: 'mm',
  hand: HAND_IN_GERMAN,
} satisfies Words['board'];

export const compare = {
  title: (a, b) => `Fingersatz ${a} oben, Fingersatz ${b} unten`,
  staff: (a, b) => `Die Musik mit den Ziffern von ${a} über dem System und darunter denen von ${b}, wo sie sich unterscheiden`,
  rule: 'Ein dicker Strich neben dem System sagt, wo sich die beiden unterscheiden.',
  note: 'Note',
  lay: { a: 'oben hinlegen', b: 'unten hinlegen' },
  short: { a: 'oben', b: 'unten' },
  apart: 'die beiden weglegen',
} satisfies Words['compare'];

const ofSlip = (what: string, after: string) => (slip: string | null): string => [what, slip ?? '', after].filter(Boolean).join(' ');

export const past = {
  title: (measure) => `Die Geschichte von Takt ${measure}`,
  picture: 'Die Geschichte als Bild; es läuft zur Seite',
  sum: (slips, moments) => `${capital(count(slips, 'Zettel'))}, ${count(moments, 'Augenblick', 'Augenblicke')} von links nach rechts; die Liste darunter nennt jeden.`,
  itself: 'Gespräch',
  working: 'Die Geschichte wird geholt.',
  failed: 'Die Geschichte ließ sich nicht holen. Was dieses Notenpult weiß, steht unten.',
  again: 'noch einmal versuchen',
  none: 'Hier wurde noch nichts hingelegt und nichts gesagt.',
  show: 'seine Geschichte, vom ersten Zettel an',
  off: 'die Geschichte weglegen',
  kinds: {
    proposed: ofSlip('hat Zettel', 'hingelegt'), revised: ofSlip('hat Zettel', 'neu geschrieben'), for: ofSlip('stimmte für', ''), against: ofSlip('stimmte gegen', ''), voteTaken: ofSlip('nahm die Stimme zurück zu', ''), adopted: ofSlip('hat', 'festgeschrieben'),
    setAside: ofSlip('legte', 'beiseite'), withdrawn: ofSlip('nahm', 'zurück'), restored: () => 'ging zu früheren Zeichen zurück', said: (slip) => (slip ? `sagte zu ${slip}` : 'sagte'), settled: (slip) => (slip ? `schloss ab, was zu ${slip} gesagt war` : 'schloss ab, was gesagt war'),
  },
} satisfies Words['past'];

import { HAND_IN_FRENCH } from '../../../core/fingering/words/french.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

/** Words of the pictures: the fingerboard, two fingerings side by side, the past of a measure. */
export const board = {
  title: (name) => `La main sur la touche, ${name}`,
  none: 'Mettez la colophane sur une note de ce passage, ou montrez-en une, pour voir la main sur la touche.',
  thumb: 'position du pouce',
  string: (name) => capital(HAND_IN_FRENCH.string(name)),
  open: (string, position, low, high) => `${string}, à vide. La main attend en ${position}, de ${low} à ${high} mm.`,
  stopped: (string, finger, mm, position, low, high) => `${string}, ${finger}, à ${mm} mm du sillet ; la main est en ${position}, de ${low} à ${high} mm.`,
  reach: (mm) => `Le doigt se pose ${mm} mm hors de la main.`,
  unit: 'mm',
  hand: HAND_IN_FRENCH,
} satisfies Words['board'];

export const compare = {
  title: (a, b) => `Doigté ${a} dessus, doigté ${b} dessous`,
  staff: (a, b) => `La musique avec les chiffres de ${a} au-dessus de la portée et, dessous, ceux de ${b} là où ils diffèrent`,
  rule: 'Un trait épais à côté de la portée montre où les deux diffèrent.',
  note: 'Note',
  lay: { a: 'poser dessus', b: 'poser dessous' },
  short: { a: 'dessus', b: 'dessous' },
  apart: 'ranger les deux',
} satisfies Words['compare'];

const ofSlip = (what: string) => (slip: string | null): string => `${what} ${slip ?? ''}`.trim();

export const past = {
  title: (measure) => `L’histoire de la mesure ${measure}`,
  picture: 'L’histoire en image ; elle défile de côté',
  sum: (slips, moments) => `${capital(count(slips, 'collette', 'collettes', 'une'))}, ${count(moments, 'moment')} de gauche à droite ; la liste dessous dit chacun.`,
  itself: 'paroles',
  working: 'L’histoire arrive.',
  failed: 'L’histoire n’a pas pu être cherchée. Ce que sait ce lutrin est dit dessous.',
  again: 'essayer encore',
  none: 'Rien n’a encore été posé ni dit ici.',
  show: 'son histoire, depuis la première collette',
  off: 'ranger l’histoire',
  kinds: {
    proposed: ofSlip('a posé la collette'), revised: ofSlip('a récrit la collette'), for: ofSlip('a voté pour'), against: ofSlip('a voté contre'), voteTaken: ofSlip('a repris sa voix sur'), adopted: ofSlip('a fixé à l’encre'),
    setAside: ofSlip('a écarté'), withdrawn: ofSlip('a repris'), restored: () => 'est revenu à des signes antérieurs', said: (slip) => (slip ? `a dit de ${slip}` : 'a dit'), settled: (slip) => (slip ? `a réglé ce qui était dit de ${slip}` : 'a réglé ce qui était dit'),
  },
} satisfies Words['past'];

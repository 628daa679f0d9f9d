import { HAND_IN_ITALIAN } from '../../../core/fingering/words/italian.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

/** Words of the pictures: the fingerboard, two fingerings side by side, the past of a measure. */
export const board = {
  title: (name) => `La mano sulla tastiera, ${name}`,
  none: 'Mettete la pece su una nota di questo passo, o indicatene una, per vedere la mano sulla tastiera.',
  thumb: 'capotasto',
  string: (name) => capital(HAND_IN_ITALIAN.string(name)),
  open: (string, position, low, high) => `${string}, a vuoto. La mano aspetta in ${position}, da ${low} a ${high} mm.`,
  stopped: (string, finger, mm, position, low, high) => `${string}, ${finger}, a ${mm} mm dal capotasto; la mano sta in ${position}, da ${low} a ${high} mm.`,
  reach: (mm) => `Il dito posa ${mm} mm fuori dalla mano.`,
  unit: 'mm',
  hand: HAND_IN_ITALIAN,
} satisfies Words['board'];

export const compare = {
  title: (a, b) => `Diteggiatura ${a} sopra, diteggiatura ${b} sotto`,
  staff: (a, b) => `La musica con le cifre di ${a} sopra il rigo e, sotto, quelle di ${b} dove differiscono`,
  rule: 'Una linea spessa accanto al rigo dice dove le due differiscono.',
  note: 'Nota',
  lay: { a: 'posarla sopra', b: 'posarla sotto' },
  short: { a: 'sopra', b: 'sotto' },
  apart: 'mettere via le due',
} satisfies Words['compare'];

const ofSlip = (what: string) => (slip: string | null): string => `${what} ${slip ?? ''}`.trim();

export const past = {
  title: (measure) => `La storia della battuta ${measure}`,
  picture: 'La storia come figura; scorre di lato',
  sum: (slips, moments) => `${capital(count(slips, 'striscia', 'strisce', 'una'))}, ${count(moments, 'momento', 'momenti')} da sinistra a destra; l’elenco sotto li dice tutti.`,
  itself: 'parole',
  working: 'La storia sta arrivando.',
  failed: 'La storia non è arrivata. Quel che sa questo leggio è elencato sotto.',
  again: 'provare ancora',
  none: 'Qui non è ancora stato posato né detto nulla.',
  show: 'la sua storia, dalla prima striscia',
  off: 'mettere via la storia',
  kinds: {
    proposed: ofSlip('ha posato la striscia'), revised: ofSlip('ha riscritto la striscia'), for: ofSlip('ha votato per'), against: ofSlip('ha votato contro'), voteTaken: ofSlip('ha ripreso il voto su'), adopted: ofSlip('ha fissato a penna'),
    setAside: ofSlip('ha accantonato'), withdrawn: ofSlip('ha ripreso'), restored: () => 'è tornato a segni precedenti', said: (slip) => (slip ? `ha detto di ${slip}` : 'ha detto'), settled: (slip) => (slip ? `ha chiuso ciò che era detto di ${slip}` : 'ha chiuso ciò che era detto'),
  },
} satisfies Words['past'];

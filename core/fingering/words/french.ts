import type { HandWords } from './handWords.ts';

const SEMITONES = ['', 'un demi-ton', 'un ton', 'une tierce mineure', 'une tierce majeure', 'une quarte', 'un triton', 'une quinte', 'une sixte mineure', 'une sixte majeure', 'une septième mineure', 'une septième majeure', 'une octave'];
const LETTERS = ['', 'une seconde', 'une tierce', 'une quarte', 'une quinte', 'une sixte', 'une septième', 'une octave', 'une neuvième', 'une dixième'];
const SYLLABLES: Record<string, string> = { C: 'do', D: 'ré', E: 'mi', F: 'fa', G: 'sol', A: 'la', B: 'si' };
const ALTERED: Record<string, string> = { '-2': ' double bémol', '-1': ' bémol', '0': '', '1': ' dièse', '2': ' double dièse' };

const times = (n: number): string => (n === 1 ? 'une fois' : n === 2 ? 'deux fois' : `${n} fois`);
const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n < 2 ? one : many}`;
const listed = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} et ${words.at(-1)!}`);
const way = (up: boolean): string => (up ? 'vers l’aigu' : 'vers le grave');
const on = (string: string | null): string => (string === null ? '' : ` sur ${string}`);
const figure = (value: number): string => value.toFixed(2).replace('.', ',');
const out = (reach: 'up' | 'back' | null): string => (reach === 'up' ? ' vers l’aigu' : reach === 'back' ? ' en arrière' : '');
const at = (note: string): string => (note.startsWith('le ') ? `au ${note.slice(3)}` : `à ${note}`);

/** The hand in French. */
export const HAND_IN_FRENCH: HandWords = {
  kind: {
    begins: 'commence',
    together: 'ensemble',
    stays: 'reste en position',
    crosses: 'change de corde, la main reste',
    extension: 'extension',
    contraction: 'contraction',
    'delayed-shift': 'démancher retardé, le doigt d’abord',
    substitution: 'substitution sur une même note',
    'chromatic-slide': 'glissement chromatique',
    'shift-same-finger': 'démancher sur le même doigt',
    'shift-departing-finger': 'démancher avec le doigt de départ',
    'shift-arriving-finger': 'démancher avec le doigt d’arrivée',
    'shift-over-open': 'démancher pendant une corde à vide',
  },
  stop: {
    'open-string': 'double corde avec une corde à vide', unison: 'unisson', third: 'tierce', sixth: 'sixte', 'fifth-one-finger': 'un doigt sur deux cordes', 'octave-1-4': 'octave avec 1 et 4',
    'fingered-octave-1-3': 'octave doigtée avec 1 et 3', 'fingered-octave-2-4': 'octave doigtée avec 2 et 4', tenth: 'dixième', 'other-stop': 'double corde',
  },
  effort: { easy: 'facile', work: 'du travail', hard: 'difficile', impossible: 'trop peu de temps' },
  zone: { comfortable: 'à l’aise', stretched: 'étendu', exceptional: 'exceptionnel' },
  terms: {
    'hand-travel': 'chemin de la main', haste: 'hâte', slide: 'glissements', stretch: 'écarts', extension: 'extensions', crossing: 'changements de corde', hop: 'sauts d’un doigt',
    'out-of-order': 'doigts croisés', 'open-string': 'cordes à vide', 'weak-finger': 'le quatrième doigt', height: 'hauteur sur la corde', 'finger-slide': 'un doigt déplacé dans la main',
    'thumb-position': 'position du pouce', 'bare-shift': 'démanchers que rien ne couvre', 'grace-finger': 'petites notes sans doigt libre', 'same-finger-again': 'le même doigt deux fois de suite', 'slurred-crossing': 'changements de corde sous une liaison',
    'unusual-place': 'endroits que les professionnels choisissent rarement', 'unusual-step': 'pas que les professionnels font rarement', 'rare-step': 'pas que presque aucun professionnel ne fait', sequence: 'une figure avec d’autres doigts que là où elle revient', 'unusual-move': 'main déplacée où les professionnels la déplacent rarement, ou gardée où ils la déplacent',
  },
  finger: (finger) => (finger === 'thumb' ? 'le pouce' : finger === 0 ? 'la corde à vide' : `le ${finger}${finger === 1 ? 'er' : 'e'} doigt`),
  string: (name) => `la corde de ${SYLLABLES[name] ?? name}`,
  position: (position) => (position === 0 ? 'demi-position' : Number.isInteger(position) ? `${position}${position === 1 ? 're' : 'e'} position` : `position ${Math.floor(position)}½`),
  measure: (n) => `mesure ${n}`,
  measures: (from, to) => (from === to ? `Mesure ${from}` : `Mesures ${from} à ${to}`),
  pitch: (letter, alter) => `${SYLLABLES[letter] ?? letter}${ALTERED[String(alter)] ?? ''}`,
  note: (pitch, which, measure) => `le ${which > 1 ? `${which}e ` : ''}${pitch}${measure === null ? '' : ` (${measure})`}`,
  letters: (steps, up) => `${LETTERS[steps] ?? counted(steps, 'position')} ${way(up)}`,
  semitones: (count, up) => `${SEMITONES[count] ?? counted(count, 'demi-ton')} ${way(up)}`,
  travel: (mm, needs, available, effort) => `${Math.round(mm)} mm, demande ${needs} ms sur ${available} ms\u00a0: ${effort}`,
  reaches: (finger, reach) => `${finger} s’étend${out(reach)}`,
  slide: (audible) => (audible ? 'glisse de façon audible' : 'le glissement s’entend à peine'),
  slideAlone: 'd’un seul musicien le glissement s’entend',
  follows: (note) => `la main suit sur ${note}`,
  stretch: (fingers, mm, zone) => `écart ${fingers} de ${Math.round(mm)} mm, ${zone}`,
  clause: {
    stays: (position, string) => `reste en ${position}${on(string)}`,
    shiftsTo: (position, string, note) => `démanche en ${position}${on(string)} ${at(note)}`,
    shiftsOverOpen: (position) => `va en ${position} pendant qu’une corde à vide sonne`,
    substitutes: (finger, note) => `passe à ${finger} sur ${note}`.replace('à le ', 'au '),
    shifts: (n, string) => `démanche ${times(n)}${on(string)}`,
    delayed: (note, finger, follows) => `va chercher ${note} avec ${finger} et laisse la main suivre sur ${follows}`,
    crossesTo: (string, note) => `passe sur ${string} ${at(note)}`,
    crossesAndBack: (string, note, back) => `passe sur ${string} ${at(note)} et revient ${at(back)}`,
    crosses: (n) => `change ${times(n)} de corde`,
    reachesFor: (note, finger, reach) => `s’étend${out(reach)} jusqu’${at(note)} avec ${finger}`,
    reaches: (n) => `s’étend ${times(n)} hors de la main`,
    open: (notes) => (notes.length > 2 ? `joue ${notes.length} notes à vide` : `joue ${listed(notes)} à vide`),
    slidesInto: (note) => `glisse de façon audible vers ${note}`,
    slidesIntoMeasure: (measure) => `glisse de façon audible vers la ${measure}`,
    slides: (n, note) => `glisse ${times(n)} de façon audible, surtout vers ${note}`,
    noSlide: 'ne glisse nulle part de façon audible',
    fingers: (fingers) => `prend avec ${listed(fingers)}`,
    lies: (position, string, note) => `joue ${note} en ${position}${on(string)}`,
  },
  hand: {
    tooWide: (fingers, mm, note) => `Pour cette main l’écart ${fingers} de ${Math.round(mm)} mm jusqu’${at(note)} est trop grand.`,
    instead: (where, clauses) => `${where}\u00a0: au lieu de cela, elle ${clauses}.`,
    keeps: 'Chaque démancher reste là où le pupitre l’a.',
    loses: (notes) => `${notes.length === 1 ? 'Le démancher du pupitre' : 'Les démanchers du pupitre'} vers ${listed(notes)} ne ${notes.length === 1 ? 'peut' : 'peuvent'} être ${notes.length === 1 ? 'gardé' : 'gardés'}\u00a0; demandez un autre endroit au chef de pupitre, ou jouez ce passage autrement.`,
    noWay: (notes) => `Aucun doigté dans cette main n’a été trouvé pour ${listed(notes)}. Laissez une note à votre voisin de rang, ou demandez au chef de pupitre.`,
  },
  join: listed,
  sideBySide: (where, names, a, b) => `${where}\u00a0: ${names[0]} ${a}\u00a0; ${names[1]} ${b}.`,
  totals: (name, { shifts, crossings, openStrings, slides }, stretch) =>
    `${name}\u00a0: ${counted(shifts, 'démancher')}, ${counted(crossings, 'changement de corde', 'changements de corde')}, ${counted(openStrings, 'note à vide', 'notes à vide')}, ${counted(slides, 'glissement audible', 'glissements audibles')}${stretch === null ? '' : `\u00a0; au plus large ${stretch}`}.`,
  costs: (name, more, most) => `${name} coûte ${figure(more)} de plus\u00a0: ${listed(most.map(({ term, difference }) => `${term} ${difference > 0 ? '+' : '−'}${figure(Math.abs(difference))}`))}.`,
  alike: 'Les deux sont les mêmes, note pour note.',
  caution: 'Ce passage demande un écart plus grand que la plupart des doigtés publiés. En cas de douleur, d’engourdissement ou de perte de contrôle\u00a0: arrêtez et consultez un médecin.',
};

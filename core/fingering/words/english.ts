import type { HandWords } from './handWords.ts';

const ORDINALS = ['half', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh', 'twelfth', 'thirteenth'];
const SEMITONES = ['', 'a semitone', 'a whole tone', 'a minor third', 'a major third', 'a fourth', 'a tritone', 'a fifth', 'a minor sixth', 'a major sixth', 'a minor seventh', 'a major seventh', 'an octave'];
const LETTERS = ['', 'a second', 'a third', 'a fourth', 'a fifth', 'a sixth', 'a seventh', 'an octave', 'a ninth', 'a tenth'];
const ALTERED: Record<string, string> = { '-2': ' double flat', '-1': ' flat', '0': '', '1': ' sharp', '2': ' double sharp' };

const ordinal = (n: number): string => ORDINALS[n] ?? `${n}th`;
const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);
const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;
const listed = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`);
const way = (up: boolean): string => (up ? 'up' : 'down');
const on = (string: string | null): string => (string === null ? '' : ` on ${string}`);

/** The hand in English. */
export const HAND_IN_ENGLISH: HandWords = {
  kind: {
    begins: 'begins',
    together: 'together',
    stays: 'stays in the frame',
    crosses: 'crosses strings, the hand stays',
    extension: 'extension',
    contraction: 'contraction',
    'delayed-shift': 'delayed shift, the finger first',
    substitution: 'substitution on one pitch',
    'chromatic-slide': 'chromatic slide',
    'shift-same-finger': 'shift on the same finger',
    'shift-departing-finger': 'shift with the departing finger',
    'shift-arriving-finger': 'shift with the arriving finger',
    'shift-over-open': 'shift over an open string',
  },
  stop: {
    'open-string': 'double stop with an open string', unison: 'unison', third: 'third', sixth: 'sixth', 'fifth-one-finger': 'one finger across two strings', 'octave-1-4': 'octave with 1 and 4',
    'fingered-octave-1-3': 'fingered octave with 1 and 3', 'fingered-octave-2-4': 'fingered octave with 2 and 4', tenth: 'tenth', 'other-stop': 'double stop',
  },
  effort: { easy: 'easy', work: 'work', hard: 'hard', impossible: 'too little time' },
  zone: { comfortable: 'comfortable', stretched: 'stretched', exceptional: 'exceptional' },
  terms: {
    'hand-travel': 'travel of the hand', haste: 'haste', slide: 'slides', stretch: 'stretches', extension: 'extensions', crossing: 'string crossings', hop: 'hops of one finger',
    'out-of-order': 'crossed fingers', 'open-string': 'open strings', 'weak-finger': 'the fourth finger', height: 'height on the string', 'finger-slide': 'a finger moved within the hand',
    'thumb-position': 'thumb position', 'bare-shift': 'shifts that nothing covers', 'grace-finger': 'grace notes without a free finger', 'same-finger-again': 'one finger twice running', 'slurred-crossing': 'crossings under a slur',
    'unusual-place': 'places professionals seldom choose', 'unusual-step': 'steps professionals seldom make', 'rare-step': 'steps hardly any professional makes', sequence: 'a figure with other fingers than where it comes again', 'unusual-move': 'hand moved where professionals seldom move it, or kept where they do',
  },
  finger: (finger) => (finger === 'thumb' ? 'the thumb' : finger === 0 ? 'the open string' : `finger ${finger}`),
  string: (name) => `the ${name} string`,
  position: (position) => (Number.isInteger(position) ? `${ordinal(position)} position` : `position ${Math.floor(position)}½`),
  measure: (n) => `measure ${n}`,
  measures: (from, to) => (from === to ? `Measure ${from}` : `Measures ${from} to ${to}`),
  pitch: (letter, alter) => `${letter}${ALTERED[String(alter)] ?? ''}`,
  note: (pitch, which, measure) => `the ${which > 1 ? `${ordinal(which)} ` : ''}${pitch}${measure === null ? '' : ` in ${measure}`}`,
  letters: (steps, up) => `${LETTERS[steps] ?? counted(steps, 'position')} ${way(up)}`,
  semitones: (count, up) => `${SEMITONES[count] ?? counted(count, 'semitone')} ${way(up)}`,
  travel: (mm, needs, available, effort) => `${Math.round(mm)} mm, needs ${needs} ms of ${available} ms: ${effort}`,
  reaches: (finger, reach) => `${finger} reaches ${reach ?? 'out'}`,
  slide: (audible) => (audible ? 'slides audibly' : 'its slide is hardly heard'),
  slideAlone: 'of one player alone the slide is heard',
  follows: (note) => `the hand follows on ${note}`,
  stretch: (fingers, mm, zone) => `stretch ${fingers} of ${Math.round(mm)} mm, ${zone}`,
  clause: {
    stays: (position, string) => `stays in ${position}${on(string)}`,
    shiftsTo: (position, string, note) => `shifts to ${position}${on(string)} at ${note}`,
    shiftsOverOpen: (position) => `moves to ${position} while an open string sounds`,
    substitutes: (finger, note) => `changes to ${finger} on ${note}`,
    shifts: (n, string) => `shifts ${times(n)}${on(string)}`,
    delayed: (note, finger, follows) => `reaches for ${note} with ${finger} and lets the hand follow on ${follows}`,
    crossesTo: (string, note) => `crosses to ${string} at ${note}`,
    crossesAndBack: (string, note, back) => `crosses to ${string} at ${note} and back at ${back}`,
    crosses: (n) => `crosses strings ${times(n)}`,
    reachesFor: (note, finger, reach) => `reaches ${reach ?? 'out'} for ${note} with ${finger}`,
    reaches: (n) => `reaches out of the hand ${times(n)}`,
    open: (notes) => (notes.length > 2 ? `plays ${notes.length} notes open` : `plays ${listed(notes)} open`),
    slidesInto: (note) => `slides audibly into ${note}`,
    slidesIntoMeasure: (measure) => `slides audibly into ${measure}`,
    slides: (n, note) => `slides audibly ${times(n)}, most into ${note}`,
    noSlide: 'slides nowhere that is heard',
    fingers: (fingers) => `takes it with ${listed(fingers)}`,
    lies: (position, string, note) => `has ${note} in ${position}${on(string)}`,
  },
  hand: {
    tooWide: (fingers, mm, note) => `For this hand the stretch ${fingers} of ${Math.round(mm)} mm to ${note} is too wide.`,
    instead: (where, clauses) => `${where}: instead, it ${clauses}.`,
    keeps: 'Every shift stays where the section has it.',
    loses: (notes) => `The section’s ${notes.length === 1 ? 'shift' : 'shifts'} to ${listed(notes)} cannot be kept; ask the principal for another place, or play this passage differently.`,
    noWay: (notes) => `No fingering within this hand was found for ${listed(notes)}. Leave a note to your desk partner, or ask the principal.`,
  },
  join: listed,
  sideBySide: (where, names, a, b) => `${where}: ${names[0]} ${a}; ${names[1]} ${b}.`,
  totals: (name, { shifts, crossings, openStrings, slides }, stretch) =>
    `${name}: ${counted(shifts, 'shift')}, ${counted(crossings, 'string crossing')}, ${counted(openStrings, 'open note')}, ${counted(slides, 'audible slide')}${stretch === null ? '' : `; widest ${stretch}`}.`,
  costs: (name, more, most) => `${name} costs ${more.toFixed(2)} more: ${listed(most.map(({ term, difference }) => `${term} ${difference > 0 ? '+' : '−'}${Math.abs(difference).toFixed(2)}`))}.`,
  alike: 'The two are the same, note for note.',
  caution: 'This passage asks a wider stretch than most published fingerings. Pain, numbness or loss of control: stop and see a licensed clinician.',
};

import type { HandWords } from './handWords.ts';

const SEMITONES = ['', 'einen Halbton', 'einen Ganzton', 'eine kleine Terz', 'eine große Terz', 'eine Quarte', 'einen Tritonus', 'eine Quinte', 'eine kleine Sexte', 'eine große Sexte', 'eine kleine Septime', 'eine große Septime', 'eine Oktave'];
const LETTERS = ['', 'eine Sekunde', 'eine Terz', 'eine Quarte', 'eine Quinte', 'eine Sexte', 'eine Septime', 'eine Oktave', 'eine None', 'eine Dezime'];
const SHARPS: Record<string, string> = { C: 'Cis', D: 'Dis', E: 'Eis', F: 'Fis', G: 'Gis', A: 'Ais', B: 'His' };
const FLATS: Record<string, string> = { C: 'Ces', D: 'Des', E: 'Es', F: 'Fes', G: 'Ges', A: 'As', B: 'B' };
const DOUBLE_FLATS: Record<string, string> = { C: 'Ceses', D: 'Deses', E: 'Eses', F: 'Feses', G: 'Geses', A: 'Ases', B: 'Heses' };

const times = (n: number): string => (n === 1 ? 'einmal' : n === 2 ? 'zweimal' : `${n}-mal`);
const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const listed = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)!}`);
const way = (up: boolean): string => (up ? 'hinauf' : 'hinab');
const on = (string: string | null): string => (string === null ? '' : ` auf ${string}`);
const figure = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');
const reached = { up: 'nach oben', back: 'zurück' } as const;
const out = (reach: keyof typeof reached | null): string => (reach === null ? 'hinaus' : reached[reach]);

/** The hand in German. */
export const HAND_IN_GERMAN: HandWords = {
  kind: {
    begins: 'beginnt',
    together: 'zusammen',
    stays: 'bleibt in der Lage',
    crosses: 'wechselt die Saite, die Hand bleibt',
    extension: 'Streckung',
    contraction: 'Zusammenziehen',
    'delayed-shift': 'verzögerter Lagenwechsel, der Finger zuerst',
    substitution: 'Fingerwechsel auf einem Ton',
    'chromatic-slide': 'chromatisches Rutschen',
    'shift-same-finger': 'Lagenwechsel mit demselben Finger',
    'shift-departing-finger': 'Lagenwechsel mit dem alten Finger',
    'shift-arriving-finger': 'Lagenwechsel mit dem neuen Finger',
    'shift-over-open': 'Lagenwechsel über eine leere Saite',
  },
  stop: {
    'open-string': 'Doppelgriff mit leerer Saite', unison: 'Einklang', third: 'Terz', sixth: 'Sexte', 'fifth-one-finger': 'ein Finger über zwei Saiten', 'octave-1-4': 'Oktave mit 1 und 4',
    'fingered-octave-1-3': 'Fingersatzoktave mit 1 und 3', 'fingered-octave-2-4': 'Fingersatzoktave mit 2 und 4', tenth: 'Dezime', 'other-stop': 'Doppelgriff',
  },
  effort: { easy: 'leicht', work: 'Arbeit', hard: 'schwer', impossible: 'zu wenig Zeit' },
  zone: { comfortable: 'bequem', stretched: 'gestreckt', exceptional: 'ungewöhnlich weit' },
  terms: {
    'hand-travel': 'Weg der Hand', haste: 'Eile', slide: 'Gleiten', stretch: 'Spannweiten', extension: 'Streckungen', crossing: 'Saitenwechsel', hop: 'Sprünge eines Fingers',
    'out-of-order': 'gekreuzte Finger', 'open-string': 'leere Saiten', 'weak-finger': 'der vierte Finger', height: 'Höhe auf der Saite', 'finger-slide': 'ein Finger in der Hand verschoben',
    'thumb-position': 'Daumenlage', 'bare-shift': 'Lagenwechsel, die nichts verdeckt', 'grace-finger': 'Vorschläge ohne freien Finger', 'same-finger-again': 'ein Finger zweimal hintereinander', 'slurred-crossing': 'Saitenwechsel unter einem Bogen',
    'unusual-place': 'Stellen, die Berufsmusiker selten wählen', 'unusual-step': 'Schritte, die Berufsmusiker selten machen', 'rare-step': 'Schritte, die kaum ein Berufsmusiker macht', sequence: 'eine Figur mit anderen Fingern als dort, wo sie wiederkehrt', 'unusual-move': 'die Hand bewegt, wo Berufsmusiker sie selten bewegen, oder gelassen, wo sie es tun',
  },
  finger: (finger) => (finger === 'thumb' ? 'dem Daumen' : finger === 0 ? 'der leeren Saite' : `dem ${finger}. Finger`),
  string: (name) => `der ${name === 'B' ? 'H' : name}-Saite`,
  position: (position) => (position === 0 ? 'der halben Lage' : Number.isInteger(position) ? `der ${position}. Lage` : `der Lage ${Math.floor(position)}½`),
  measure: (n) => `Takt ${n}`,
  measures: (from, to) => (from === to ? `Takt ${from}` : `Takt ${from} bis ${to}`),
  pitch: (letter, alter) => (alter === 1 ? SHARPS[letter]! : alter === 2 ? `${SHARPS[letter]!}is` : alter === -1 ? FLATS[letter]! : alter === -2 ? DOUBLE_FLATS[letter]! : letter === 'B' ? 'H' : letter),
  note: (pitch, which, measure) => `${which > 1 ? `${which}. ` : ''}${pitch}${measure === null ? '' : ` in ${measure}`}`,
  letters: (steps, up) => `${LETTERS[steps] ?? counted(steps, 'Lage', 'Lagen')} ${way(up)}`,
  semitones: (count, up) => `${SEMITONES[count] ?? counted(count, 'Halbton', 'Halbtöne')} ${way(up)}`,
  travel: (mm, needs, available, effort) => `${Math.round(mm)} mm, braucht ${needs} ms von ${available} ms: ${effort}`,
  reaches: (finger, reach) => `mit ${finger} ${out(reach)} gegriffen`,
  slide: (audible) => (audible ? 'gleitet hörbar' : 'das Gleiten ist kaum zu hören'),
  slideAlone: 'von einem allein ist das Gleiten zu hören',
  follows: (note) => `die Hand folgt auf ${note}`,
  stretch: (fingers, mm, zone) => `Spannweite ${fingers} von ${Math.round(mm)} mm, ${zone}`,
  clause: {
    stays: (position, string) => `bleibt in ${position}${on(string)}`,
    shiftsTo: (position, string, note) => `wechselt bei ${note}${on(string)} zu ${position}`,
    shiftsOverOpen: (position) => `geht zu ${position}, während eine leere Saite klingt`,
    substitutes: (finger, note) => `wechselt auf ${note} zu ${finger}`,
    shifts: (n, string) => `wechselt ${times(n)} die Lage${on(string)}`,
    delayed: (note, finger, follows) => `greift mit ${finger} nach ${note} voraus und lässt die Hand auf ${follows} folgen`,
    crossesTo: (string, note) => `geht bei ${note} zu ${string}`,
    crossesAndBack: (string, note, back) => `geht bei ${note} zu ${string} und bei ${back} zurück`,
    crosses: (n) => `wechselt ${times(n)} die Saite`,
    reachesFor: (note, finger, reach) => `greift mit ${finger} ${out(reach)} nach ${note}`,
    reaches: (n) => `greift ${times(n)} aus der Hand hinaus`,
    open: (notes) => (notes.length > 2 ? `spielt ${notes.length} Noten auf leerer Saite` : `bleibt auf ${listed(notes)} bei der leeren Saite`),
    slidesInto: (note) => `gleitet hörbar zu ${note}`,
    slidesIntoMeasure: (measure) => `gleitet hörbar in ${measure} hinein`,
    slides: (n, note) => `gleitet ${times(n)} hörbar, am meisten zu ${note}`,
    noSlide: 'gleitet nirgends hörbar',
    fingers: (fingers) => `greift mit ${listed(fingers)}`,
    lies: (position, string, note) => `spielt ${note} in ${position}${on(string)}`,
  },
  hand: {
    tooWide: (fingers, mm, note) => `Für diese Hand ist die Spannweite ${fingers} von ${Math.round(mm)} mm bei ${note} zu weit.`,
    instead: (where, clauses) => `${where}: diese Hand ${clauses}.`,
    keeps: 'Jeder Lagenwechsel bleibt, wo ihn die Gruppe hat.',
    loses: (notes) => `${notes.length === 1 ? 'Der Lagenwechsel der Gruppe' : 'Die Lagenwechsel der Gruppe'} bei ${listed(notes)} ${notes.length === 1 ? 'lässt' : 'lassen'} sich nicht halten; bitten Sie die Stimmführung um eine andere Stelle, oder spielen Sie es anders.`,
    noWay: (notes) => `Für ${listed(notes)} fand sich kein Fingersatz in dieser Hand. Überlassen Sie die Note Ihrem Pultnachbarn, oder fragen Sie die Stimmführung.`,
  },
  join: listed,
  sideBySide: (where, names, a, b) => `${where}: ${names[0]} ${a}; ${names[1]} ${b}.`,
  totals: (name, { shifts, crossings, openStrings, slides }, stretch) =>
    `${name}: ${counted(shifts, 'Lagenwechsel', 'Lagenwechsel')}, ${counted(crossings, 'Saitenwechsel', 'Saitenwechsel')}, ${counted(openStrings, 'Note', 'Noten')} auf leerer Saite, ${slides}-mal hörbares Gleiten${stretch === null ? '' : `; am weitesten ${stretch}`}.`,
  costs: (name, more, most) => `${name} kostet ${figure(more, 2)} mehr: ${listed(most.map(({ term, difference }) => `${term} ${difference > 0 ? '+' : '−'}${figure(Math.abs(difference), 2)}`))}.`,
  alike: 'Die beiden sind gleich, Note für Note.',
  caution: 'Diese Stelle verlangt eine weitere Streckung als die meisten gedruckten Fingersätze. Bei Schmerz, Taubheit oder Verlust der Kontrolle: aufhören und ärztlichen Rat holen.',
};

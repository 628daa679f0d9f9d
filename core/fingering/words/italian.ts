import type { HandWords } from './handWords.ts';

const ORDINALS = ['mezza', 'prima', 'seconda', 'terza', 'quarta', 'quinta', 'sesta', 'settima', 'ottava', 'nona', 'decima', 'undicesima', 'dodicesima'];
const SEMITONES = ['', 'un semitono', 'un tono', 'una terza minore', 'una terza maggiore', 'una quarta', 'un tritono', 'una quinta', 'una sesta minore', 'una sesta maggiore', 'una settima minore', 'una settima maggiore', 'un’ottava'];
const LETTERS = ['', 'una seconda', 'una terza', 'una quarta', 'una quinta', 'una sesta', 'una settima', 'un’ottava', 'una nona', 'una decima'];
const SYLLABLES: Record<string, string> = { C: 'do', D: 're', E: 'mi', F: 'fa', G: 'sol', A: 'la', B: 'si' };
const ALTERED: Record<string, string> = { '-2': ' doppio bemolle', '-1': ' bemolle', '0': '', '1': ' diesis', '2': ' doppio diesis' };

const times = (n: number): string => (n === 1 ? 'una volta' : n === 2 ? 'due volte' : `${n} volte`);
const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const listed = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} e ${words.at(-1)!}`);
const way = (up: boolean): string => (up ? 'in su' : 'in giù');
const onto = (string: string): string => (string.startsWith('la ') ? `sulla ${string.slice(3)}` : `su ${string}`);
const on = (string: string | null): string => (string === null ? '' : ` ${onto(string)}`);
/** A note bears its article: "il si bemolle", with a preposition "al", "sul". */
const at = (note: string): string => note.replace(/^il /, 'al ');
const over = (note: string): string => note.replace(/^il /, 'sul ');
const withFinger = (finger: string): string => (finger.startsWith('il ') ? `col ${finger.slice(3)}` : `con ${finger}`);
const figure = (value: number): string => value.toFixed(2).replace('.', ',');
const out = (reach: 'up' | 'back' | null): string => (reach === 'up' ? ' in su' : reach === 'back' ? ' indietro' : '');

/** The hand in Italian. */
export const HAND_IN_ITALIAN: HandWords = {
  kind: {
    begins: 'comincia',
    together: 'insieme',
    stays: 'resta in posizione',
    crosses: 'cambia corda, la mano resta',
    extension: 'estensione',
    contraction: 'contrazione',
    'delayed-shift': 'cambio di posizione ritardato, prima il dito',
    substitution: 'sostituzione sulla stessa nota',
    'chromatic-slide': 'scivolamento cromatico',
    'shift-same-finger': 'cambio di posizione sullo stesso dito',
    'shift-departing-finger': 'cambio di posizione col dito di partenza',
    'shift-arriving-finger': 'cambio di posizione col dito d’arrivo',
    'shift-over-open': 'cambio di posizione durante una corda vuota',
  },
  stop: {
    'open-string': 'bicordo con una corda vuota', unison: 'unisono', third: 'terza', sixth: 'sesta', 'fifth-one-finger': 'un dito su due corde', 'octave-1-4': 'ottava con 1 e 4',
    'fingered-octave-1-3': 'ottava diteggiata con 1 e 3', 'fingered-octave-2-4': 'ottava diteggiata con 2 e 4', tenth: 'decima', 'other-stop': 'bicordo',
  },
  effort: { easy: 'facile', work: 'impegno', hard: 'difficile', impossible: 'troppo poco tempo' },
  zone: { comfortable: 'comoda', stretched: 'estesa', exceptional: 'eccezionale' },
  terms: {
    'hand-travel': 'cammino della mano', haste: 'fretta', slide: 'scivolamenti', stretch: 'aperture', extension: 'estensioni', crossing: 'cambi di corda', hop: 'salti di un dito',
    'out-of-order': 'dita incrociate', 'open-string': 'corde vuote', 'weak-finger': 'il quarto dito', height: 'altezza sulla corda', 'finger-slide': 'un dito mosso dentro la mano',
    'thumb-position': 'capotasto', 'bare-shift': 'cambi che nulla copre', 'grace-finger': 'appoggiature senza un dito libero', 'same-finger-again': 'lo stesso dito due volte di fila', 'slurred-crossing': 'cambi di corda sotto una legatura',
    'unusual-place': 'punti che i professionisti scelgono di rado', 'unusual-step': 'passi che i professionisti fanno di rado', 'rare-step': 'passi che quasi nessun professionista fa', sequence: 'una figura con dita diverse da dove ritorna', 'unusual-move': 'mano mossa dove i professionisti la muovono di rado, o ferma dove la muovono',
  },
  finger: (finger) => (finger === 'thumb' ? 'il pollice' : finger === 0 ? 'la corda vuota' : `il ${finger}º dito`),
  string: (name) => `la corda di ${SYLLABLES[name] ?? name}`,
  position: (position) => (Number.isInteger(position) ? `${ORDINALS[position] ?? `${position}ª`} posizione` : `posizione ${Math.floor(position)}½`),
  measure: (n) => `battuta ${n}`,
  measures: (from, to) => (from === to ? `Battuta ${from}` : `Battute da ${from} a ${to}`),
  pitch: (letter, alter) => `${SYLLABLES[letter] ?? letter}${ALTERED[String(alter)] ?? ''}`,
  note: (pitch, which, measure) => `il ${which > 1 ? `${which}º ` : ''}${pitch}${measure === null ? '' : ` a ${measure}`}`,
  letters: (steps, up) => `${LETTERS[steps] ?? counted(steps, 'posizione', 'posizioni')} ${way(up)}`,
  semitones: (count, up) => `${SEMITONES[count] ?? counted(count, 'semitono', 'semitoni')} ${way(up)}`,
  travel: (mm, needs, available, effort) => `${Math.round(mm)} mm, chiede ${needs} ms su ${available} ms: ${effort}`,
  reaches: (finger, reach) => `${finger} si estende${out(reach)}`,
  slide: (audible) => (audible ? 'lo scivolamento si sente' : 'lo scivolamento si sente appena'),
  slideAlone: 'da soli lo scivolamento si sente',
  follows: (note) => `la mano segue ${over(note)}`,
  stretch: (fingers, mm, zone) => `apertura ${fingers} di ${Math.round(mm)} mm, ${zone}`,
  clause: {
    stays: (position, string) => `resta in ${position}${on(string)}`,
    shiftsTo: (position, string, note) => `passa in ${position}${on(string)} ${at(note)}`,
    shiftsOverOpen: (position) => `va in ${position} mentre suona una corda vuota`,
    substitutes: (finger, note) => `passa ${at(finger)} ${over(note)}`,
    shifts: (n, string) => `cambia posizione ${times(n)}${on(string)}`,
    delayed: (note, finger, follows) => `cerca ${note} ${withFinger(finger)} e lascia che la mano segua ${over(follows)}`,
    crossesTo: (string, note) => `passa ${onto(string)} ${at(note)}`,
    crossesAndBack: (string, note, back) => `passa ${onto(string)} ${at(note)} e torna ${at(back)}`,
    crosses: (n) => `cambia corda ${times(n)}`,
    reachesFor: (note, finger, reach) => `si estende${out(reach)} fino ${at(note)} ${withFinger(finger)}`,
    reaches: (n) => `si estende fuori dalla mano ${times(n)}`,
    open: (notes) => (notes.length > 2 ? `suona ${notes.length} note su corda vuota` : `suona ${listed(notes)} su corda vuota`),
    slidesInto: (note) => `scivola in modo udibile fino ${at(note)}`,
    slidesIntoMeasure: (measure) => `scivola in modo udibile a ${measure}`,
    slides: (n, note) => `scivola in modo udibile ${times(n)}, soprattutto fino ${at(note)}`,
    noSlide: 'non scivola mai in modo udibile',
    fingers: (fingers) => `prende con ${listed(fingers)}`,
    lies: (position, string, note) => `suona ${note} in ${position}${on(string)}`,
  },
  hand: {
    tooWide: (fingers, mm, note) => `Per questa mano l’apertura ${fingers} di ${Math.round(mm)} mm fino ${at(note)} è troppo ampia.`,
    instead: (where, clauses) => `${where}: invece, ${clauses}.`,
    keeps: 'Ogni cambio di posizione resta dove lo ha la sezione.',
    loses: (notes) => `${notes.length === 1 ? 'Il cambio della sezione' : 'I cambi della sezione'} verso ${listed(notes)} non ${notes.length === 1 ? 'si può mantenere' : 'si possono mantenere'}; chieda alla prima parte un altro punto, o suoni il passo in altro modo.`,
    noWay: (notes) => `Per ${listed(notes)} non è stata trovata una diteggiatura dentro questa mano. Lasci una nota al compagno di leggio, o chieda alla prima parte.`,
  },
  join: listed,
  sideBySide: (where, names, a, b) => `${where}: ${names[0]} ${a}; ${names[1]} ${b}.`,
  totals: (name, { shifts, crossings, openStrings, slides }, stretch) =>
    `${name}: ${counted(shifts, 'cambio di posizione', 'cambi di posizione')}, ${counted(crossings, 'cambio di corda', 'cambi di corda')}, ${counted(openStrings, 'nota su corda vuota', 'note su corda vuota')}, ${counted(slides, 'scivolamento udibile', 'scivolamenti udibili')}${stretch === null ? '' : `; al massimo ${stretch}`}.`,
  costs: (name, more, most) => `${name} costa ${figure(more)} in più: ${listed(most.map(({ term, difference }) => `${term} ${difference > 0 ? '+' : '−'}${figure(Math.abs(difference))}`))}.`,
  alike: 'Le due sono uguali, nota per nota.',
  caution: 'Questo passo chiede un’apertura più ampia della maggior parte delle diteggiature pubblicate. In caso di dolore, intorpidimento o perdita di controllo: si fermi e si rivolga a un medico.',
};

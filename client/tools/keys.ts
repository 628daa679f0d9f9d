import type { Sign } from './pencil/signs.ts';

/** Everything that can be done on the stand, by key, by sign on the ledge, by touch, or in words. */
export type Command =
  | ({ do: 'mark' } & Sign)
  | { do: 'step'; by: 1 | -1; unit: 'note' | 'measure'; extend: boolean }
  | { do: 'seat'; by: 1 | -1 }
  /** `said`: a printed number or a rehearsal letter; without it the ledge asks. */
  | { do: 'goTo'; said?: string }
  | { do: 'place'; place: 'shelf' | 'folder' | 'stand' | 'section' | 'archive' }
  | { do: 'earlier' | 'later' | 'substitute' | 'rub' | 'undo' | 'redo' | 'words' | 'nextOpen' | 'nextFinding' | 'enter' | 'leave' | 'for' | 'against' | 'say' | 'keys' | 'history' | 'setAside' | 'mute' | 'pencil' | 'lay' | 'light' | 'takeBack' | 'fingerings' | 'shareOut' | 'hair' | 'beside' | 'past' | 'revisions' | 'hear' | 'hearSection' | 'command' | 'elsewhere' | 'waits' | 'notices' | 'print' | 'larger' | 'smaller' | 'turn' | 'underneath' | 'passage' | 'openHere' | 'openBefore' | 'openAfter' | 'myPart' };

export interface KeyPress {
  key: string;
  code: string;
  shift: boolean;
  control: boolean;
  alt: boolean;
}

/** How the sheet of keys is divided, in its order. */
export const GROUPS = ['going', 'marking', 'pencil', 'deciding', 'asking', 'hearing', 'rest'] as const;

interface Row {
  /** Its words stand under this name in `words.keys.says`. */
  name: string;
  group: (typeof GROUPS)[number];
  /** As they are pressed, "Shift+ArrowLeft"; all do the same. */
  keys: readonly string[];
  /** Null: a key that means something only while something else lies open. */
  command: Command | null;
  /** Rows of one line stand together on the sheet, under its words in `words.keys.lines`. */
  line?: string;
  /** Heard in every place, not on the stand alone. */
  everywhere?: true;
}

const step = (by: 1 | -1, unit: 'note' | 'measure', extend = false): Command => ({ do: 'step', by, unit, extend });
const finger = (finger: 0 | 1 | 2 | 3 | 4 | 'thumb'): Command => ({ do: 'mark', sign: 'finger', finger });
const string = (string: 1 | 2 | 3 | 4): Command => ({ do: 'mark', sign: 'string', string });

/** Every command, its keys, and where it stands on the sheet. The keyboard, the sheet of keys and the commands in words are read from here. */
export const COMMANDS = [
  { name: 'noteBefore', group: 'going', keys: ['ArrowLeft'], command: step(-1, 'note'), line: 'note' },
  { name: 'noteAfter', group: 'going', keys: ['ArrowRight'], command: step(1, 'note'), line: 'note' },
  { name: 'measureBefore', group: 'going', keys: ['Ctrl+ArrowLeft'], command: step(-1, 'measure'), line: 'measure' },
  { name: 'measureAfter', group: 'going', keys: ['Ctrl+ArrowRight'], command: step(1, 'measure'), line: 'measure' },
  { name: 'passageBack', group: 'going', keys: ['Shift+ArrowLeft'], command: step(-1, 'note', true), line: 'passage' },
  { name: 'passageOn', group: 'going', keys: ['Shift+ArrowRight'], command: step(1, 'note', true), line: 'passage' },
  { name: 'passageMeasureBack', group: 'going', keys: ['Ctrl+Shift+ArrowLeft'], command: step(-1, 'measure', true), line: 'passageMeasure' },
  { name: 'passageMeasureOn', group: 'going', keys: ['Ctrl+Shift+ArrowRight'], command: step(1, 'measure', true), line: 'passageMeasure' },
  { name: 'seatBefore', group: 'going', keys: ['ArrowUp'], command: { do: 'seat', by: -1 }, line: 'seat' },
  { name: 'seatAfter', group: 'going', keys: ['ArrowDown'], command: { do: 'seat', by: 1 }, line: 'seat' },
  { name: 'goTo', group: 'going', keys: ['g'], command: { do: 'goTo' } },
  { name: 'nextOpen', group: 'going', keys: ['n'], command: { do: 'nextOpen' } },
  { name: 'waits', group: 'going', keys: ['Shift+n'], command: { do: 'waits' } },
  { name: 'nextFinding', group: 'going', keys: ['w'], command: { do: 'nextFinding' } },
  { name: 'finger0', group: 'marking', keys: ['0'], command: finger(0), line: 'finger' },
  { name: 'finger1', group: 'marking', keys: ['1'], command: finger(1), line: 'finger' },
  { name: 'finger2', group: 'marking', keys: ['2'], command: finger(2), line: 'finger' },
  { name: 'finger3', group: 'marking', keys: ['3'], command: finger(3), line: 'finger' },
  { name: 'finger4', group: 'marking', keys: ['4'], command: finger(4), line: 'finger' },
  { name: 'thumb', group: 'marking', keys: ['t'], command: finger('thumb') },
  { name: 'substitute', group: 'marking', keys: ['='], command: { do: 'substitute' } },
  { name: 'string1', group: 'marking', keys: ['Shift+1'], command: string(1), line: 'string' },
  { name: 'string2', group: 'marking', keys: ['Shift+2'], command: string(2), line: 'string' },
  { name: 'string3', group: 'marking', keys: ['Shift+3'], command: string(3), line: 'string' },
  { name: 'string4', group: 'marking', keys: ['Shift+4'], command: string(4), line: 'string' },
  { name: 'reach', group: 'marking', keys: ['x'], command: { do: 'mark', sign: 'reach' } },
  { name: 'harmonic', group: 'marking', keys: ['h'], command: { do: 'mark', sign: 'harmonic' } },
  { name: 'down', group: 'marking', keys: ['d'], command: { do: 'mark', sign: 'bow', bow: 'down' } },
  { name: 'up', group: 'marking', keys: ['u'], command: { do: 'mark', sign: 'bow', bow: 'up' } },
  { name: 'change', group: 'marking', keys: ['c'], command: { do: 'mark', sign: 'change' } },
  { name: 'earlier', group: 'marking', keys: [','], command: { do: 'earlier' } },
  { name: 'later', group: 'marking', keys: ['.'], command: { do: 'later' } },
  { name: 'retake', group: 'marking', keys: ['r'], command: { do: 'mark', sign: 'retake' } },
  { name: 'hooked', group: 'marking', keys: ['o'], command: { do: 'mark', sign: 'hooked' } },
  { name: 'split', group: 'marking', keys: ['k'], command: { do: 'mark', sign: 'slur', slur: 'split' } },
  { name: 'join', group: 'marking', keys: ['j'], command: { do: 'mark', sign: 'slur', slur: 'join' } },
  { name: 'words', group: 'marking', keys: ['/'], command: { do: 'words' } },
  { name: 'elsewhere', group: 'pencil', keys: ['Shift+y'], command: { do: 'elsewhere' } },
  { name: 'rub', group: 'pencil', keys: ['Backspace', 'Delete'], command: { do: 'rub' } },
  { name: 'undo', group: 'pencil', keys: ['z', 'Ctrl+z'], command: { do: 'undo' } },
  { name: 'redo', group: 'pencil', keys: ['Shift+z', 'Ctrl+Shift+z'], command: { do: 'redo' } },
  { name: 'pencil', group: 'pencil', keys: ['p'], command: { do: 'pencil' } },
  { name: 'enter', group: 'deciding', keys: ['Enter'], command: { do: 'enter' } },
  { name: 'leave', group: 'deciding', keys: ['Escape'], command: { do: 'leave' } },
  { name: 'for', group: 'deciding', keys: ['+'], command: { do: 'for' } },
  { name: 'against', group: 'deciding', keys: ['-', '−'], command: { do: 'against' } },
  { name: 'say', group: 'deciding', keys: ['s'], command: { do: 'say' } },
  { name: 'setAside', group: 'deciding', keys: ['a'], command: { do: 'setAside' } },
  { name: 'takeBack', group: 'deciding', keys: ['b'], command: { do: 'takeBack' } },
  { name: 'mute', group: 'deciding', keys: ['m'], command: { do: 'mute' } },
  { name: 'history', group: 'deciding', keys: ['i'], command: { do: 'history' } },
  { name: 'past', group: 'deciding', keys: ['q'], command: { do: 'past' } },
  { name: 'revisions', group: 'deciding', keys: ['Shift+q'], command: { do: 'revisions' } },
  { name: 'fingerings', group: 'asking', keys: ['f'], command: { do: 'fingerings' } },
  { name: 'layAbove', group: 'asking', keys: ['a'], command: null, line: 'layBoth' },
  { name: 'layBelow', group: 'asking', keys: ['b'], command: null, line: 'layBoth' },
  { name: 'shareOut', group: 'asking', keys: ['v'], command: { do: 'shareOut' } },
  { name: 'hair', group: 'asking', keys: ['e'], command: { do: 'hair' } },
  { name: 'beside', group: 'asking', keys: ['y'], command: { do: 'beside' } },
  { name: 'hear', group: 'hearing', keys: ['Space'], command: { do: 'hear' } },
  { name: 'hearSection', group: 'hearing', keys: ['Shift+Space'], command: { do: 'hearSection' } },
  { name: 'command', group: 'rest', keys: [':', 'Ctrl+k'], command: { do: 'command' } },
  { name: 'keys', group: 'rest', keys: ['?'], command: { do: 'keys' } },
  { name: 'notices', group: 'rest', keys: ['Shift+s'], command: { do: 'notices' } },
  { name: 'smaller', group: 'rest', keys: ['<'], command: { do: 'smaller' } },
  { name: 'larger', group: 'rest', keys: ['>'], command: { do: 'larger' } },
  { name: 'turn', group: 'rest', keys: ['Shift+v'], command: { do: 'turn' } },
  { name: 'underneath', group: 'rest', keys: ['Shift+u'], command: { do: 'underneath' } },
  { name: 'print', group: 'rest', keys: ['Ctrl+p'], command: { do: 'print' } },
  { name: 'light', group: 'rest', keys: ['l'], command: { do: 'light' } },
  { name: 'shelf', group: 'rest', keys: ['Alt+1'], command: { do: 'place', place: 'shelf' }, line: 'places', everywhere: true },
  { name: 'folder', group: 'rest', keys: ['Alt+2'], command: { do: 'place', place: 'folder' }, line: 'places', everywhere: true },
  { name: 'stand', group: 'rest', keys: ['Alt+3'], command: { do: 'place', place: 'stand' }, line: 'places', everywhere: true },
  { name: 'section', group: 'rest', keys: ['Alt+4'], command: { do: 'place', place: 'section' }, line: 'places', everywhere: true },
  { name: 'archive', group: 'rest', keys: ['Alt+5'], command: { do: 'place', place: 'archive' }, everywhere: true },
] as const satisfies readonly Row[];

export type CommandRow = (typeof COMMANDS)[number];
export type CommandName = CommandRow['name'];
export type LineName = Extract<CommandRow, { line: string }>['line'];
export type GroupName = (typeof GROUPS)[number];

const BY_KEY = new Map<string, Command>(
  (COMMANDS as readonly Row[]).flatMap(({ keys, command, everywhere }) => (command && !everywhere ? keys.map((key) => [key, command] as const) : [])),
);

/** The command a key stands for on the stand, or null. Digits go by their place on the keyboard, so that Shift+1 is string I on every layout. */
export function commandOf({ key, code, shift, control, alt }: KeyPress): Command | null {
  if (alt) return null;
  const digit = /^(?:Digit|Numpad)([0-9])$/.exec(code)?.[1];
  const plain = key === ' ' ? 'Space' : key.length === 1 ? key.toLowerCase() : key;
  const pressed = (name: string) => BY_KEY.get([control ? 'Ctrl' : '', shift ? 'Shift' : '', name].filter(Boolean).join('+'));
  const found = (digit ? pressed(digit) : undefined) ?? pressed(plain);
  // Many signs need Shift on one layout and none on another; letters and digits mean something of their own with it.
  return found ?? (control || /^[a-z0-9]$/.test(plain) ? null : (BY_KEY.get(plain) ?? null));
}

import type { Sign } from './pencil/signs.ts';

/** Everything that can be done on the stand, by key, by sign on the ledge, or by touch. */
export type Command =
  | ({ do: 'mark' } & Sign)
  | { do: 'step'; by: 1 | -1; unit: 'note' | 'measure'; extend: boolean }
  | { do: 'seat'; by: 1 | -1 }
  | { do: 'earlier' | 'later' | 'substitute' | 'rub' | 'undo' | 'redo' | 'words' | 'goTo' | 'nextOpen' | 'nextFinding' | 'enter' | 'leave' | 'for' | 'against' | 'say' | 'keys' | 'history' | 'setAside' | 'mute' | 'pencil' | 'lay' | 'light' | 'takeBack' | 'fingerings' | 'shareOut' | 'hair' | 'beside' | 'past' | 'hear' | 'hearSection' | 'print' | 'larger' | 'smaller' | 'turn' | 'underneath' };

export interface KeyPress {
  key: string;
  code: string;
  shift: boolean;
  control: boolean;
  alt: boolean;
}

const SIMPLE: Record<string, Command> = {
  t: { do: 'mark', sign: 'finger', finger: 'thumb' },
  d: { do: 'mark', sign: 'bow', bow: 'down' },
  u: { do: 'mark', sign: 'bow', bow: 'up' },
  c: { do: 'mark', sign: 'change' },
  x: { do: 'mark', sign: 'reach' },
  h: { do: 'mark', sign: 'harmonic' },
  r: { do: 'mark', sign: 'retake' },
  o: { do: 'mark', sign: 'hooked' },
  j: { do: 'mark', sign: 'slur', slur: 'join' },
  k: { do: 'mark', sign: 'slur', slur: 'split' },
  '=': { do: 'substitute' },
  ',': { do: 'earlier' },
  '.': { do: 'later' },
  z: { do: 'undo' },
  '/': { do: 'words' },
  f: { do: 'fingerings' },
  v: { do: 'shareOut' },
  e: { do: 'hair' },
  y: { do: 'beside' },
  g: { do: 'goTo' },
  n: { do: 'nextOpen' },
  w: { do: 'nextFinding' },
  s: { do: 'say' },
  a: { do: 'setAside' },
  b: { do: 'takeBack' },
  m: { do: 'mute' },
  i: { do: 'history' },
  q: { do: 'past' },
  p: { do: 'pencil' },
  l: { do: 'light' },
  '+': { do: 'for' },
  '-': { do: 'against' },
  '−': { do: 'against' },
  '<': { do: 'smaller' },
  '>': { do: 'larger' },
  V: { do: 'turn' },
  Y: { do: 'underneath' },
  '?': { do: 'keys' },
  Backspace: { do: 'rub' },
  Delete: { do: 'rub' },
  Enter: { do: 'enter' },
  Escape: { do: 'leave' },
};

function digit(code: string, shift: boolean): Command | null {
  const found = /^(?:Digit|Numpad)([0-4])$/.exec(code);
  if (!found) return null;
  const n = Number(found[1]) as 0 | 1 | 2 | 3 | 4;
  if (!shift) return { do: 'mark', sign: 'finger', finger: n };
  return n === 0 ? null : { do: 'mark', sign: 'string', string: n };
}

/** The command a key stands for on the stand, or null. Digits go by their place on the keyboard, so that Shift+1 is string I on every layout. */
export function commandOf({ key, code, shift, control, alt }: KeyPress): Command | null {
  if (alt) return null;
  if (key === 'ArrowLeft' || key === 'ArrowRight') return { do: 'step', by: key === 'ArrowRight' ? 1 : -1, unit: control ? 'measure' : 'note', extend: shift };
  if (control && key === 'p') return { do: 'print' };
  if (control) return key === 'z' ? { do: shift ? 'redo' : 'undo' } : null;
  if (key === 'ArrowUp' || key === 'ArrowDown') return { do: 'seat', by: key === 'ArrowDown' ? 1 : -1 };
  if (key.toLowerCase() === 'z' && shift) return { do: 'redo' };
  if (key === ' ') return { do: shift ? 'hearSection' : 'hear' };
  return digit(code, shift) ?? SIMPLE[key] ?? (shift ? null : (SIMPLE[key.toLowerCase()] ?? null));
}

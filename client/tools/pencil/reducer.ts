import { excludes, type Mark, type MarkValue } from '../../../core/music/mark.ts';

/** propose: for all to see and vote on. alone: for me, in this browser. ink: proposed and decided at once, for the principal. */
export type Held = 'propose' | 'alone' | 'ink';

interface Sheet {
  /** Pencilled, not yet laid under the part. */
  draft: readonly Mark[];
  /** For me alone. */
  alone: readonly Mark[];
}

export interface Pencil extends Sheet {
  held: Held;
  past: readonly Sheet[];
  future: readonly Sheet[];
  /** The next finger takes over from the one that stands on the note. */
  substituting: boolean;
}

export type PencilAction =
  | { type: 'hold'; held: Held }
  | { type: 'write'; marks: readonly Mark[] }
  | { type: 'rub'; notes: readonly string[] }
  | { type: 'replace'; note: string; before: MarkValue; after: MarkValue }
  | { type: 'undo' }
  | { type: 'redo' }
  | { type: 'substitute' }
  | { type: 'laid' }
  | { type: 'take'; marks: readonly Mark[] };

export const startPencil = (alone: readonly Mark[] = []): Pencil => ({ held: 'propose', draft: [], alone, past: [], future: [], substituting: false });

const sheetName = (held: Held): 'draft' | 'alone' => (held === 'alone' ? 'alone' : 'draft');

/** Marks that say for whom they are may stand side by side on one note: one seat's change, and none for another's. */
function apart({ seats: a = 'all' }: Mark, { seats: b = 'all' }: Mark): boolean {
  return a !== 'all' && b !== 'all' && !a.some((seat) => b.includes(seat));
}

/** Marks of one slot of a note exclude each other: the new one takes the place. */
function over(marks: readonly Mark[], fresh: readonly Mark[]): readonly Mark[] {
  return fresh.reduce((all, mark) => [...all.filter((old) => old.note !== mark.note || !excludes(old.value, mark.value) || apart(old, mark)), mark], marks);
}

function change(pencil: Pencil, edit: (marks: readonly Mark[]) => readonly Mark[]): Pencil {
  const name = sheetName(pencil.held);
  const next = edit(pencil[name]);
  if (next === pencil[name]) return pencil;
  const { draft, alone } = pencil;
  return { ...pencil, [name]: next, past: [...pencil.past, { draft, alone }], future: [], substituting: false };
}

export function pencilReducer(pencil: Pencil, action: PencilAction): Pencil {
  const { draft, alone, past, future } = pencil;
  switch (action.type) {
    case 'hold':
      return { ...pencil, held: action.held };
    case 'write':
      return change(pencil, (marks) => over(marks, action.marks));
    case 'rub':
      return change(pencil, (marks) => (marks.some(({ note }) => action.notes.includes(note)) ? marks.filter(({ note }) => !action.notes.includes(note)) : marks));
    case 'replace':
      return change(pencil, (marks) => over(marks.filter(({ note, value }) => note !== action.note || value !== action.before), [{ note: action.note, value: action.after }]));
    case 'undo': {
      const before = past.at(-1);
      return before ? { ...pencil, ...before, past: past.slice(0, -1), future: [{ draft, alone }, ...future] } : pencil;
    }
    case 'redo': {
      const next = future[0];
      return next ? { ...pencil, ...next, past: [...past, { draft, alone }], future: future.slice(1) } : pencil;
    }
    case 'substitute':
      return { ...pencil, substituting: !pencil.substituting };
    case 'laid':
      return { ...pencil, draft: [], past: [], future: [] };
    case 'take':
      return change({ ...pencil, held: pencil.held === 'alone' ? 'propose' : pencil.held }, (marks) => over(marks, action.marks));
  }
}

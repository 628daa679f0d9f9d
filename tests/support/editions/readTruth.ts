import { inner, type PartText } from './textOfPart.ts';

export interface TrueNote {
  /** Count in this text. */
  index: number;
  origin: number | null;
  pitch: string;
  at: number;
  to: number;
  grace: boolean;
  /** Goes on from an earlier note. */
  goesOn: boolean;
}

/** What begins together, or a silence. */
export interface TrueMoment {
  at: number;
  notes: TrueNote[];
  says: string;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

function notesOf({ measures }: PartText): { notes: TrueNote[]; end: number } {
  const notes: TrueNote[] = [];
  const open = new Map<string, TrueNote>();
  let [divisions, index, start] = [1, 0, 0];
  for (const { items } of measures) {
    let [cursor, furthest, last] = [start, start, start];
    const found: { note: TrueNote; begins: boolean; stops: boolean }[] = [];
    for (const { kind, text, origin } of items) {
      if (kind === 'attributes') divisions = Number(inner(text, 'divisions') ?? divisions);
      const length = Number(inner(text, 'duration') ?? 0) / divisions;
      if (kind === 'backup') cursor -= length;
      if (kind === 'forward') cursor += length;
      if (kind === 'note') {
        const grace = /<grace[\s/>]/.test(text);
        const at = /<chord\s*\/>/.test(text) ? last : cursor;
        if (!grace && at === cursor) cursor += length;
        last = at;
        const pitch = /<pitch>/.test(text) ? `${inner(text, 'step')}${inner(text, 'alter') ?? ''}/${inner(text, 'octave')}` : /<rest[\s/>]/.test(text) ? '' : 'x';
        if (pitch) found.push({ note: { index, origin, pitch, at, to: at + (grace ? 0 : length), grace, goesOn: false }, begins: /<tie type="start"/.test(text), stops: /<tie type="stop"/.test(text) });
        index += 1;
      }
      furthest = Math.max(furthest, cursor);
    }
    for (const { note, begins, stops } of found.sort((a, b) => a.note.at - b.note.at)) {
      const before = stops ? open.get(note.pitch) : undefined;
      if (before && near(before.to, note.at)) {
        before.to = note.to;
        note.goesOn = true;
        if (!begins) open.delete(note.pitch);
      } else if (begins) open.set(note.pitch, note);
      notes.push(note);
    }
    start = furthest;
  }
  return { notes, end: start };
}

/** What a text plays, read from its own letters: the reader of the house takes no part in it. */
export function readTruth(text: PartText): { notes: TrueNote[]; moments: TrueMoment[] } {
  const { notes, end } = notesOf(text);
  const heads = notes.filter(({ goesOn }) => !goesOn).sort((a, b) => a.at - b.at);
  const moments: TrueMoment[] = [];
  let heard = 0;
  const silence = (to: number) => {
    if (to - heard > 1e-6) moments.push({ at: heard, notes: [], says: `silence ${(to - heard).toFixed(5)}` });
  };
  for (let i = 0; i < heads.length; ) {
    const { at } = heads[i]!;
    const together = heads.slice(i, i + 40).filter((note) => near(note.at, at));
    silence(at);
    const says = together.map(({ pitch, to, grace }) => `${pitch}:${grace ? 'g' : (to - at).toFixed(5)}`).sort().join(' ');
    moments.push({ at, notes: together, says });
    heard = Math.max(heard, ...together.map(({ to }) => to));
    i += together.length;
  }
  silence(end);
  return { notes, moments };
}

import type { Part } from '../../music/part.ts';
import { slurredNotes } from '../../music/slurredNotes.ts';

/** How a note lies under printed slurs: begins one, ends one, is bound to the note before. Example: the first of three slurred notes is "begins". */
export function slursRound(part: Part): (note: string) => string {
  const [from, to, under] = [new Set(part.slurs.map((slur) => slur.from)), new Set(part.slurs.map((slur) => slur.to)), slurredNotes(part)];
  return (note) => [from.has(note) && 'begins', to.has(note) && 'ends', under.has(note) && 'bound'].filter(Boolean).join(' ');
}

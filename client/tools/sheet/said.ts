import { plain } from '../../words/plain.ts';
import { words } from '../../words/words.ts';
import { COMMANDS, type Command } from '../keys.ts';
import { capsOf } from './rows.ts';

/** A command as it can be said. */
export interface Said {
  name: string;
  says: string;
  /** Its key, to be learnt by the way. */
  cap: string;
  command: Command;
}

const tokens = (text: string): string[] => plain(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean);

const all = (): Said[] =>
  COMMANDS.flatMap(({ name, keys, command }): Said[] => (command ? [{ name, says: words.keys.says[name], cap: capsOf(keys.slice(0, 1)), command }] : []));

/** A measure's number or a rehearsal letter at the end of what is said: "go to 46", "46". */
function place(said: readonly string[]): Said[] {
  const where = said.at(-1);
  if (!where || !/^(\d+\p{L}?|\p{L})$/u.test(where)) return [];
  const goTo = tokens(words.keys.says.goTo);
  const begun = said.slice(0, -1);
  if (!begun.length && !/\d/.test(where)) return [];
  if (!begun.every((token) => goTo.some((word) => word.startsWith(token)))) return [];
  const number = where.toUpperCase();
  return [{ name: 'goTo', says: `${words.line.goTo} ${number}`, cap: capsOf(['g']), command: { do: 'goTo', said: number } }];
}

/** How well it fits, lower is better; null: not at all. */
function distance(says: string, said: readonly string[]): number | null {
  const own = tokens(says);
  const places = said.map((token) => own.findIndex((word) => word.startsWith(token)));
  return places.includes(-1) ? null : places.reduce((sum, at) => sum + at, 0);
}

/** Commands that what was said may mean, the likeliest first: every word said begins a word of theirs. Nothing said is every command, in the order of the sheet. */
export function meant(said: string): Said[] {
  const spoken = tokens(said);
  if (!spoken.length) return said.trim() ? [] : all();
  const ranked = all().flatMap((one) => {
    const far = distance(one.says, spoken);
    return far === null ? [] : [{ one, far }];
  });
  return [...place(spoken), ...ranked.sort((a, b) => a.far - b.far).map(({ one }) => one)];
}

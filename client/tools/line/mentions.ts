import type { Mention } from '../../../core/agreement/state.ts';
import { plain } from '../../words/plain.ts';

/** The @ and what follows it up to the caret, when a name is being typed there; null otherwise. */
export function namedSoFar(text: string, caret: number): { from: number; said: string } | null {
  const before = text.slice(0, caret);
  const from = before.lastIndexOf('@');
  if (from < 0 || /[\p{L}\p{N}]/u.test(before[from - 1] ?? '')) return null;
  const said = before.slice(from + 1);
  return /[.,;:!?\n]/.test(said) || said.split(' ').length > 3 ? null : { from, said };
}

/** People a name begun may mean: any of its words begins so. A name that stands there whole is asked for no more. */
export function meantBy<Who extends { name: string }>(said: string, people: readonly Who[]): Who[] {
  const wanted = plain(said);
  if (people.some(({ name }) => wanted.startsWith(`${plain(name)} `) || wanted === plain(name))) return [];
  return people.filter(({ name }) => plain(name).startsWith(wanted) || plain(name).split(' ').some((word) => word.startsWith(wanted)));
}

/** Those whose name stands in a text after @. Of two names that begin alike the longer is read first. */
export function mentionsIn(text: string, people: readonly { id: string; name: string }[]): Mention[] {
  let rest = text;
  const found: Mention[] = [];
  for (const { id, name } of [...people].sort((a, b) => b.name.length - a.name.length)) {
    if (!rest.includes(`@${name}`)) continue;
    rest = rest.replaceAll(`@${name}`, ' ');
    found.push({ person: id, name });
  }
  return found;
}

export interface Piece {
  text: string;
  /** Who is named here. */
  person: string | null;
}

/** A text cut where somebody is named, to be drawn. Joined again the pieces are the text without its @. */
export function piecesOf(text: string, mentions: readonly Mention[] = []): Piece[] {
  const byLength = [...mentions].sort((a, b) => b.name.length - a.name.length);
  return byLength.reduce<Piece[]>(
    (pieces, { person, name }) =>
      pieces.flatMap((piece) => {
        if (piece.person !== null) return [piece];
        return piece.text.split(`@${name}`).flatMap((between, i): Piece[] => [...(i ? [{ text: name, person }] : []), ...(between ? [{ text: between, person: null }] : [])]);
      }),
    [{ text, person: null }],
  );
}

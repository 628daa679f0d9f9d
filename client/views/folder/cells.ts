import type { SectionView, WorkView } from '../../../core/agreement/wire/http.ts';

export type PartOfWork = WorkView['parts'][number];

export interface Cell {
  work: WorkView;
  part: PartOfWork;
}

export interface Cells {
  columns: (SectionView | null)[];
  /** For each work, the parts in each column; usually one. */
  rows: { work: WorkView; parts: Cell[][] }[];
}

/** Works down, sections across; sections that play nothing are left out, parts without a section stand in a last column. */
export function cellsOf(works: readonly WorkView[], sections: readonly SectionView[]): Cells {
  const used = sections.filter(({ id }) => works.some(({ parts }) => parts.some(({ section }) => section?.id === id)));
  const loose = works.some(({ parts }) => parts.some(({ section }) => section === null));
  const columns = [...used, ...(loose ? [null] : [])];
  const rows = works.map((work) => ({ work, parts: columns.map((column) => work.parts.filter(({ section }) => (section?.id ?? null) === (column?.id ?? null)).map((part) => ({ work, part }))) }));
  return { columns, rows };
}

/** The part in hand: the one chosen, else one of the section I sit in, else the first. */
export function cellInHand({ rows }: Cells, chosen: string | null, mine: string | undefined): Cell | undefined {
  const all = rows.flatMap(({ parts }) => parts.flat());
  return all.find(({ part }) => part.id === chosen) ?? all.find(({ part: { section } }) => section !== null && section.id === mine) ?? all[0];
}

/** The part one step away from another, or the same at the edge. */
export function neighbour({ rows }: Cells, part: string | null, dx: number, dy: number): string | null {
  const y = rows.findIndex(({ parts }) => parts.flat().some((cell) => cell.part.id === part));
  const row = rows[y]?.parts.flat() ?? [];
  const x = row.findIndex((cell) => cell.part.id === part);
  const next = dy ? rows[y + dy]?.parts.flat() : row;
  return next?.[Math.min(x + dx, next.length - 1)]?.part.id ?? part;
}

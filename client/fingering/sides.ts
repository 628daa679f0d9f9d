/** a stands above the staff, b below it. */
export type Side = 'a' | 'b';

/** The two fingerings laid side by side, by their place among those found. */
export type Sides = Readonly<Record<Side, number>>;

/** The two after one is laid on a side; the other stays, or is the first that is not the same. Null where there are no two. */
export function sidesAfter(before: Sides | null, side: Side, laid: number, of: number): Sides | null {
  if (of < 2) return null;
  // The same two again, as a new wish to see them.
  if (before?.[side] === laid) return { ...before };
  const other: Side = side === 'a' ? 'b' : 'a';
  const stays = before === null || before[other] === laid ? (laid === 0 ? 1 : 0) : before[other];
  return side === 'a' ? { a: laid, b: stays } : { a: stays, b: laid };
}

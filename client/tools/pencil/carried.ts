import type { Mark } from '../../../core/music/mark.ts';

interface Carried {
  part: string;
  marks: readonly Mark[];
  /** What the ledge of the stand says of them. */
  sentence: string;
}

let carried: Carried | null = null;

/** Marks worked out in another place, to be in the pencil when the part is next on the stand. */
export const carry = (marks: Carried): void => {
  carried = marks;
};

/** What was carried here for this part; once. */
export function takeCarried(part: string): Carried | null {
  if (carried?.part !== part) return null;
  const found = carried;
  carried = null;
  return found;
}

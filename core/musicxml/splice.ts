/** Replaces `text.slice(start, end)`; an insertion where both are equal. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/**
 * Text from `from` to `to` with the edits made. Edits may come in any order; of several insertions at one place the first given stands first,
 * and all of them stand before a replacement that begins there. Throws when two edits overlap: that is a fault of ours.
 * Example: `splice('abc', [{ start: 1, end: 2, text: 'x' }])` is `'axc'`.
 */
export function splice(text: string, edits: readonly Edit[], from = 0, to = text.length): string {
  const pieces: string[] = [];
  let at = from;
  for (const edit of edits.toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    if (edit.start < at || edit.end < edit.start || edit.end > to) throw new Error(`Edits overlap at ${edit.start}.`);
    pieces.push(text.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(text.slice(at, to));
  return pieces.join('');
}

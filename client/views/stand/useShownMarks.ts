import { useCallback, useMemo } from 'react';
import type { ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { Desk } from './desk.ts';
import { bySystem } from './bySystem.ts';
import { gone, inked, pencilled } from './shownMarks.ts';

const NONE: readonly Mark[] = [];

/** Marks of a slip that was not taken, until the next key. */
function refusedMarks({ snapshot }: Desk): readonly Mark[] {
  const last = snapshot.refusals.at(-1);
  const marks = last?.name === 'propose' || last?.name === 'revise' ? (last.input as { marks?: Mark[] }).marks : undefined;
  return marks ?? NONE;
}

/** Every mark to be drawn, by system: in ink, under the pencil, for me alone, not taken, and with the history on what is gone. */
export function useShownMarks(desk: Desk, ranges: EngravingSnapshot['ranges']): readonly (readonly ShownMark[])[] {
  const { state, facts, standing, pencil, caret, index, history } = desk;
  const refused = refusedMarks(desk);
  const measureOf = useCallback(({ note }: { note: string }) => facts.notes.get(note) ?? 0, [facts]);
  // Of a whole part only few systems change from key to key: the others keep the very list they had.
  const ink = useMemo(() => bySystem(ranges, inked(standing, caret.seat, index), measureOf), [ranges, standing, caret.seat, index, measureOf]);
  const written = useMemo(() => {
    const all = [
      ...pencilled(pencil.draft, caret.seat === 'all' ? 'all' : [caret.seat], standing, index),
      ...pencilled(pencil.alone, 'all', standing, index, 'private'),
      ...pencilled(refused, 'all', standing, index, 'aside'),
      ...(history ? gone(state, index) : []),
    ];
    return bySystem(ranges, all, measureOf);
  }, [ranges, state, standing, pencil.draft, pencil.alone, caret.seat, index, history, refused, measureOf]);
  return useMemo(() => {
    const over = new Set(pencil.draft.map(({ note, value }) => `${note} ${value.kind === 'none' ? value.slot : value.kind}`));
    const left = ({ note, value }: ShownMark) => value.kind === 'change' || !over.has(`${note} ${value.kind}`);
    return ink.map((marks, i) => (written[i]!.length ? [...marks.filter(left), ...written[i]!] : marks));
  }, [ink, written, pencil.draft]);
}

import { useCallback, useMemo, useState } from 'react';
import type { OtherPart } from '../../../beside/messages.ts';
import { brokenAt } from '../../../../core/engraving/broken.ts';
import type { EngravingSnapshot } from '../../../engraving/engraving.ts';
import { useEngraving } from '../../../engraving/useEngraving.ts';
import { keptText } from '../../../library/kept/library.ts';
import { indexPart } from '../../../library/partIndex.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { words } from '../../../words/words.ts';
import type { ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import type { Desk } from '../desk.ts';
import { bySystem } from '../bySystem.ts';
import { inked } from '../shownMarks.ts';

/** Another part of the work, engraved in this part's lines, with what its section has inked in. */
export interface Underneath {
  other: OtherPart | null;
  engraved: EngravingSnapshot;
  marks: readonly (readonly ShownMark[])[];
  /** The next part of the work, and after the last none. */
  turn(): void;
}

/** The part that lies under this one's lines for as long as it is wanted. */
export function useUnderneath({ beside, say }: Desk, { ranges, whole }: EngravingSnapshot, width: number): Underneath {
  const { others } = beside;
  const [id, setId] = useState<string | null>(null);
  const other = others.find((one) => one.id === id) ?? null;
  const { value } = useLoaded(`underneath ${id ?? ''}`, () => (id ? keptText(`/parts/${id}/engraving`) : Promise.resolve(null)));
  const text = useMemo(() => (value && whole ? brokenAt(value, ranges) : null), [value, whole, ranges]);
  // Under a line of mine its measures are set as tight as they must be.
  const { engraved } = useEngraving(text, width, 0.3, true);
  const turn = useCallback(() => {
    const next = others[others.findIndex((one) => one.id === id) + 1];
    setId(next?.id ?? null);
    say(next ? words.view.underneath(next.section) : others.length ? words.view.nothingUnderneath : words.view.noOthers);
  }, [others, id, say]);
  const marks = useMemo(() => {
    if (!other) return [];
    const index = indexPart(other.part);
    return bySystem(ranges, inked(other.marks.map((mark) => ({ ...mark, seats: mark.seats ?? 'all' })), 'all', index), ({ note }) => index.notes.get(note)?.measure.ordinal ?? 0);
  }, [other, ranges]);
  return { other, engraved, marks, turn };
}

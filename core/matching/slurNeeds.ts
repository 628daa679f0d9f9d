import type { NoteMarks } from '../check/seatMarks.ts';
import type { MarkSheet } from './markSheet.ts';

interface Need {
  /** A bow begins on the note by a split, or must not. */
  splits?: boolean;
  /** The bow goes on to the next note by a join, or must not. */
  joins?: boolean;
}

/** What notes need of their one slur mark, which says how a bow begins on them and how it goes on from them. */
export class SlurNeeds {
  readonly #needs = new Map<string, Need>();

  add(note: string, need: Need): void {
    this.#needs.set(note, { ...this.#needs.get(note), ...need });
  }

  /** Puts the marks on `sheet`; what stands (`on`) and is not asked about stays. A note that needs both signs is joined, and its bow changed as it begins. */
  settle(on: (note: string) => NoteMarks, sheet: MarkSheet): void {
    for (const [note, { splits, joins }] of this.#needs) {
      const { slur } = on(note);
      const [split, join] = [splits ?? slur === 'split', joins ?? slur === 'join'];
      if (split && join) sheet.put(note, { kind: 'change', after: 0 });
      const wanted = join ? 'join' : split ? 'split' : undefined;
      if (wanted === slur) continue;
      sheet.put(note, wanted ? { kind: 'slur', slur: wanted } : { kind: 'none', slot: 'slur' });
    }
  }
}

import type { CarriedMark } from '../../../core/agreement/carried.ts';

/** The mark in hand, and the note of the new edition it would go on. */
export interface Carrying {
  key: string | null;
  note: string | null;
}

export type CarryingEvent =
  | { type: 'take'; mark: CarriedMark | null }
  /** The mark before or after, in order. */
  | { type: 'next'; by: 1 | -1; marks: readonly CarriedMark[] }
  | { type: 'point'; note: string }
  /** The note before or after among `walk`; from elsewhere, its first. */
  | { type: 'step'; by: 1 | -1; walk: readonly string[] };

const taken = (mark: CarriedMark | null | undefined): Carrying => ({ key: mark?.key ?? null, note: mark?.maybe?.note ?? null });

/** Which mark is looked at and where it would go; a mark that is taken points at its likeliest note. */
export function carrying(state: Carrying, event: CarryingEvent): Carrying {
  switch (event.type) {
    case 'take':
      return taken(event.mark);
    case 'next': {
      const { marks, by } = event;
      const at = marks.findIndex(({ key }) => key === state.key);
      const next = marks[at < 0 ? (by > 0 ? 0 : marks.length - 1) : at + by];
      return next ? taken(next) : state;
    }
    case 'point':
      return { ...state, note: event.note };
    case 'step': {
      if (state.key === null) return state;
      const at = state.note === null ? -1 : event.walk.indexOf(state.note);
      const next = at < 0 ? event.walk[0] : event.walk[at + event.by];
      return next ? { ...state, note: next } : state;
    }
  }
}

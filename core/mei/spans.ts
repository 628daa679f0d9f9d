import type { EventPlace } from './places.ts';

/** From one note to a later one of the same staff. */
export interface Span {
  from: EventPlace;
  to: EventPlace;
}

/** Spans with numbers that tell those open at the same time apart, from 1; a number is used again from the note on that ends its span. Example: two slurs in a row are both 1. */
export function numberedSpans(spans: readonly Span[]): (Span & { number: number })[] {
  const open = new Map<number, number[]>();
  return [...spans]
    .sort((a, b) => a.from.staff - b.from.staff || a.from.order - b.from.order || b.to.order - a.to.order)
    .map((span) => {
      const { staff, order } = span.from;
      const ends = open.get(staff) ?? [];
      open.set(staff, ends);
      const free = ends.findIndex((end) => end <= order);
      const at = free < 0 ? ends.length : free;
      ends[at] = span.to.order;
      return { ...span, number: at + 1 };
    });
}

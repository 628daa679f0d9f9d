import type { HairBow } from '../../../bowing/messages.ts';

/** A bow as it is drawn, in staff spaces; y grows from the frog to the point. */
export interface DrawnBow {
  bow: HairBow;
  /** From its beginning over its notes to its end, as far as this line of music goes. */
  points: { x: number; y: number }[];
  /** Its notes after the first. */
  ticks: { x: number; y: number }[];
  /** From where the bow was before, when the hand places it anew. */
  lift: { x0: number; y0: number; x1: number; y1: number } | null;
  /** Its first note stands in this line of music. */
  begins: boolean;
}

export const HEIGHT = 6;
/** Nearer than this is the same place, mm: half of the planner's step. */
const SAME = 2.5;

/** What is needed of a line of music: when it begins and ends, and where seconds and notes lie. */
export interface LineOfMusic {
  from: number;
  to: number;
  x(second: number): number;
  at(note: string): number | null;
}

/**
 * The bows of one voice in a line of music. A bow that began before it, or goes on after it, is cut where the line is.
 * Example: four seconds down from frog to point are one line from the upper to the lower edge, straight in time, bent where the notes stand closer.
 */
export function hairShapes(bows: readonly HairBow[], hair: number, { from, to, x, at }: LineOfMusic): DrawnBow[] {
  return bows.flatMap((bow, i): DrawnBow[] => {
    const [begins, ends] = [Math.max(bow.begins, from), Math.min(bow.ends, to)];
    if (ends - begins <= 0) return [];
    const y = (second: number) => ((bow.from + ((bow.to - bow.from) * (second - bow.begins)) / (bow.ends - bow.begins)) / hair) * HEIGHT;
    const place = (second: number) => ({ x: x(second), y: y(second) });
    const inside = bow.notes.flatMap((note) => at(note) ?? []).filter((second) => second > begins && second < ends);
    const before = bows[i - 1];
    const isLifted = before !== undefined && bow.begins >= from && Math.abs(before.to - bow.from) > SAME && before.ends >= from;
    return [{
      bow,
      points: [begins, ...inside, ends].map(place),
      ticks: inside.map(place),
      lift: isLifted ? { x0: x(before.ends), y0: (before.to / hair) * HEIGHT, x1: x(bow.begins), y1: (bow.from / hair) * HEIGHT } : null,
      begins: bow.begins >= from,
    }];
  });
}

import type { Measure, Slur } from '../music/part.ts';
import { compareTimes, plus } from '../music/time.ts';

interface End {
  id: string;
  at: number | string;
}

/**
 * Pairs the slurs of a part as a reader would: a stop ends the last start of its number; a start that is started again is forgotten; a stop
 * that meets no start waits for one written later in the same measure but sounding earlier (another voice), and is forgotten after it.
 * Linear in the number of slur ends. Result in the order of the later-written ends.
 */
export function pairSlurs(measures: readonly Measure[]): Slur[] {
  const slurs: Slur[] = [];
  const open = new Map<number, End>();
  for (const measure of measures) {
    const waiting = new Map<number, End>();
    for (const note of measure.notes) {
      const end: End = { id: note.id, at: plus(measure.start, note.onset) };
      // A note that ends one slur and begins the next may list them in either order.
      for (const slur of note.slurs.filter(({ type }) => type === 'stop')) {
        const start = open.get(slur.number);
        if (start && start.id !== note.id && compareTimes(start.at, end.at) <= 0) {
          slurs.push({ from: start.id, to: note.id });
          open.delete(slur.number);
        } else {
          waiting.set(slur.number, end);
        }
      }
      for (const slur of note.slurs.filter(({ type }) => type === 'start')) {
        const stop = waiting.get(slur.number);
        if (stop && compareTimes(end.at, stop.at) < 0) {
          slurs.push({ from: note.id, to: stop.id });
          waiting.delete(slur.number);
        } else {
          open.set(slur.number, end);
        }
      }
    }
  }
  return slurs;
}

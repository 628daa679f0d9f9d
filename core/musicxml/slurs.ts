import type { Measure, Slur } from '../music/part.ts';
import { compareTimes, type ExactTime, plus } from '../music/time.ts';

/** A paired slur with the number that ties its ends together in the document. */
export interface NumberedSlur extends Slur {
  number: number;
}

interface End {
  id: string;
  at: ExactTime;
}

/**
 * Pairs the slurs that are shown as a reader would: a stop ends the last start of its number; a start that is started again is forgotten; a stop
 * that meets no start waits for one written later in the same measure but sounding earlier (another voice), and is forgotten after it.
 * Linear in the number of slur ends. Result in the order of the later-written ends.
 * Example: a part without slurs gives `[]`.
 */
export function pairNumberedSlurs(measures: readonly Measure[]): NumberedSlur[] {
  const slurs: NumberedSlur[] = [];
  const open = new Map<number, End>();
  for (const measure of measures) {
    const waiting = new Map<number, End>();
    for (const note of measure.notes) {
      if (!note.slurs.length) continue;
      const end: End = { id: note.id, at: plus(measure.start, note.onset) };
      // A note that ends one slur and begins the next may list them in either order.
      for (const { number } of note.slurs.filter(({ type, hidden }) => type === 'stop' && !hidden)) {
        const start = open.get(number);
        if (start && start.id !== note.id && compareTimes(start.at, end.at) <= 0) {
          slurs.push({ from: start.id, to: note.id, number });
          open.delete(number);
        } else {
          waiting.set(number, end);
        }
      }
      for (const { number } of note.slurs.filter(({ type, hidden }) => type === 'start' && !hidden)) {
        const stop = waiting.get(number);
        if (stop && compareTimes(end.at, stop.at) < 0) {
          slurs.push({ from: note.id, to: stop.id, number });
          waiting.delete(number);
        } else {
          open.set(number, end);
        }
      }
    }
  }
  return slurs;
}

/** The shown slurs of a part, from first note to last. */
export function pairSlurs(measures: readonly Measure[]): Slur[] {
  return pairNumberedSlurs(measures).map(({ from, to }) => ({ from, to }));
}

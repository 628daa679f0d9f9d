import { describe, expect, it } from 'vitest';
import { restOfLog } from '../../../client/library/usePartLog.ts';
import { pastShapes } from '../../../client/views/stand/past/pastShapes.ts';
import type { LogEntry } from '../../../core/agreement/event.ts';
import type { HistoryKind, HistoryMoment } from '../../../core/agreement/measureHistory.ts';

const moment = (seq: number, kind: HistoryKind, slip: string | null, day = 1): HistoryMoment => ({ seq, kind, slip, at: `2026-11-0${day}T09:00:00.000Z`, by: 'p', name: 'P', text: '' });
const entry = (seq: number): LogEntry => ({ seq, operation: `o${seq}`, name: 'comment', input: null, events: [], by: 'p', byName: 'P', at: '2026-11-01T09:00:00.000Z' });

describe('the history of a measure as a picture', () => {
  it('has a line for every slip in the order they were laid, and one for the measure itself', () => {
    const { lanes } = pastShapes([moment(1, 'proposed', 'a'), moment(2, 'said', null), moment(3, 'proposed', 'b')]);
    expect(lanes.map(({ slip }) => slip)).toEqual(['a', null, 'b']);
    expect(new Set(lanes.map(({ y }) => y)).size).toBe(3);
  });

  it('goes from left to right in the log’s order, evenly', () => {
    const xs = pastShapes([1, 4, 90].map((seq) => moment(seq, 'for', 'a'))).moments.map(({ x }) => x);
    expect(xs[1]! - xs[0]!).toBeGreaterThan(0);
    expect(xs[2]! - xs[1]!).toBeCloseTo(xs[1]! - xs[0]!, 9);
  });

  it('turns pencil into ink where the slip was inked in, and goes on to the edge', () => {
    const { lanes, moments, width } = pastShapes([moment(1, 'proposed', 'a'), moment(2, 'adopted', 'a'), moment(3, 'proposed', 'b')]);
    expect(lanes[0]).toMatchObject({ end: 'adopted', ink: moments[1]!.x });
    expect(lanes[0]!.x1).toBeGreaterThan(moments[2]!.x);
    expect(lanes[0]!.x1).toBeLessThan(width);
    expect(lanes[1]).toMatchObject({ end: 'open', ink: null });
  });

  it('ends a line where the slip was set aside or taken back', () => {
    for (const kind of ['setAside', 'withdrawn'] as const) {
      const { lanes, moments } = pastShapes([moment(1, 'proposed', 'a'), moment(2, kind, 'a'), moment(3, 'said', null)]);
      expect(lanes[0]).toMatchObject({ end: kind, x1: moments[1]!.x, ink: null });
    }
  });

  it('names a day where it begins', () => {
    const { days, moments } = pastShapes([moment(1, 'proposed', 'a', 1), moment(2, 'for', 'a', 1), moment(3, 'for', 'a', 3)]);
    expect(days.map(({ x }) => x)).toEqual([moments[0]!.x, moments[2]!.x]);
  });
});

describe('the log of a part', () => {
  it('is fetched in as many answers as it takes, from where it is known', async () => {
    const log = [1, 2, 3, 4, 5].map(entry);
    const asked: number[] = [];
    const whole = await restOfLog(log.slice(0, 1), (after) => {
      asked.push(after);
      return Promise.resolve({ head: 5, entries: log.slice(after, after + 2) });
    });
    expect(whole).toEqual(log);
    expect(asked).toEqual([1, 3]);
  });

  it('stops where the library has nothing more', async () => {
    expect(await restOfLog([], () => Promise.resolve({ head: 3, entries: [] }))).toEqual([]);
  });
});

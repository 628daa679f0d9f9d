import type { LogEntry } from './event.ts';
import { laidOverAfter } from './laidOverAfter.ts';
import { measureNow } from './layOver.ts';

export type HistoryKind = 'proposed' | 'revised' | 'for' | 'against' | 'voteTaken' | 'adopted' | 'setAside' | 'restored' | 'withdrawn' | 'said' | 'settled';

/** One thing that happened to a measure. */
export interface HistoryMoment {
  seq: number;
  /** ISO 8601, UTC. */
  at: string;
  by: string;
  name: string;
  kind: HistoryKind;
  /** The slip it happened to; null for what was said of the measure itself. */
  slip: string | null;
  /** The sentence that came with it; empty where there was none. */
  text: string;
}

/** A slip's range at a place of the log. */
interface Range {
  from: number;
  to: number;
}

/**
 * What happened to a measure, in the log's order: slips laid, written anew and decided, votes for this measure, what was said. A slip that no longer covers the measure
 * is told of up to the change that took it away; rules put to rest, stages and locks belong to no measure. `measure`: ordinal as
 * it is now, whatever editions were laid over since. Never throws; events of unknown slips are passed over.
 * Example: a slip over measures 3 to 4 with a vote in 3 is two moments of measure 3 and one of measure 4.
 */
export function measureHistory(entries: readonly LogEntry[], measure: number): HistoryMoment[] {
  const ranges = new Map<string, Range>();
  const comments = new Map<string, string | null>();
  const later = laidOverAfter(entries);
  return entries.flatMap(({ seq, at, by, byName, events }, index) => {
    const now = (ordinal: number) => later[index]!.reduce((there, measures) => measureNow(measures, there), ordinal);
    const covers = (id: string): boolean => {
      const range = ranges.get(id);
      return range !== undefined && now(range.from) <= measure && measure <= now(range.to);
    };
    return events.flatMap((event): HistoryMoment[] => {
      const moment = (kind: HistoryKind, slip: string | null, text: string): HistoryMoment[] => [{ seq, at, by, name: byName, kind, slip, text }];
      switch (event.type) {
        case 'proposed':
        case 'revised': {
          const before = covers(event.id);
          ranges.set(event.id, event);
          return before || covers(event.id) ? moment(event.type, event.id, event.why) : [];
        }
        case 'withdrawn':
          return covers(event.id) ? moment('withdrawn', event.id, event.why) : [];
        case 'adopted':
        case 'setAside':
          return covers(event.proposal) ? moment(event.type, event.proposal, event.why) : [];
        case 'restored':
          return [...event.back, ...event.aside].some((moved) => now(moved.measure) === measure) ? moment('restored', null, event.why) : [];
        case 'voteCast':
          return now(event.measure) === measure && covers(event.proposal) ? moment(event.vote ?? 'voteTaken', event.proposal, '') : [];
        case 'commented': {
          const here = event.proposal === null ? now(event.measure) === measure : covers(event.proposal);
          if (!here) return [];
          comments.set(event.id, event.proposal);
          return moment('said', event.proposal, event.text);
        }
        case 'commentResolved': {
          const slip = comments.get(event.id);
          return slip === undefined ? [] : moment('settled', slip, '');
        }
        case 'laidOver':
          for (const [id, { from, to }] of ranges) ranges.set(id, { from: measureNow(event.measures, from), to: measureNow(event.measures, to) });
          return [];
        default:
          return [];
      }
    });
  });
}

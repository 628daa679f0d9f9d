import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { deskOf } from '../../../core/music/seat.ts';
import { changesOf, closest } from './lanes.ts';

export interface FindingPlace {
  finding: Finding;
  desk: number;
  second: number;
}

/** Findings about a desk, where their changes lie in time; those about the whole section have no place in a lane. */
export function findingPlaces(findings: readonly Finding[], passage: SectionPassage): FindingPlace[] {
  const changes = changesOf(passage);
  return findings.flatMap((finding): FindingPlace[] => {
    if (finding.seats === 'all') return [];
    const desks = [...new Set(finding.seats.map(deskOf))];
    if (desks.length !== 1 || finding.seats.length > 2) return [];
    const begin = passage.barlines.find(({ ordinal }) => ordinal === finding.measure)?.second ?? passage.start;
    const end = passage.barlines.find(({ ordinal }) => ordinal === finding.measure + 1)?.second ?? passage.end;
    const here = changes.filter(({ seat, second }) => finding.seats.includes(seat) && second >= begin - 0.3 && second <= end + 0.3);
    const pair = finding.seats.length === 2 ? closest(here, desks[0]!) : null;
    const second = pair?.second ?? here[0]?.second;
    return second === undefined ? [] : [{ finding, desk: desks[0]!, second }];
  });
}

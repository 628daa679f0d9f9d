import { describe, expect, it } from 'vitest';
import type { SectionPassage, SeatBow } from '../../../core/bowing/sectionBows.ts';
import { bowChangeAudibility } from '../../../core/bowing/dip.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { indexPart } from '../../../client/library/partIndex.ts';
import { findingPlaces } from '../../../client/views/section/findingPlaces.ts';
import { LANE, zigzag } from '../../../client/views/section/Lane.tsx';
import { changesOf, closest, clusters, desksOf } from '../../../client/views/section/lanes.ts';
import { passageSentence } from '../../../client/views/section/passageSentence.ts';
import { timeAxis } from '../../../client/drawing/playedTime.ts';
import { stepChange } from '../../../client/views/section/useChangeKeys.ts';
import { words } from '../../../client/words/words.ts';
import { smallPart } from '../../support/smallPart.ts';

const bow = (start: number, end: number, direction: 'up' | 'down'): SeatBow => ({ begins: { measure: Math.floor(start / 4) + 1, at: start % 4, second: start, event: 0, inside: true }, start, end, direction, inferred: false });
/** Eight seconds, two measures; desk 1 changes at 3 and 3.3, desk 2 at 1 and 6. */
const passage: SectionPassage = {
  from: 1, to: 2, start: 0, end: 8,
  barlines: [{ ordinal: 1, second: 0 }, { ordinal: 2, second: 4 }],
  seats: [
    { seat: '1o', bows: [bow(0, 3, 'down'), bow(3, 8, 'up')] },
    { seat: '1i', bows: [bow(0, 3.3, 'down'), bow(3.3, 8, 'up')] },
    { seat: '2o', bows: [bow(0, 1, 'down'), bow(1, 8, 'up')] },
    { seat: '2i', bows: [bow(0, 6, 'down'), bow(6, 8, 'up')] },
  ],
};
const changes = changesOf(passage);

describe('the desks against time', () => {
  it('the first bow of a seat is a beginning, every other a change, in the order of time', () => {
    expect(changes.map(({ seat, second }) => [seat, second])).toEqual([['2o', 1], ['1o', 3], ['1i', 3.3], ['2i', 6]]);
  });

  it('desks stand front to back with outside before inside, and a last desk may be single', () => {
    expect(desksOf(['2o', '1i', '1o'])).toEqual([{ desk: 1, outside: '1o', inside: '1i' }, { desk: 2, outside: '2o', inside: null }]);
  });

  it('changes less than a quarter second after the first count together; one just a quarter after it does not', () => {
    const at = (second: number) => ({ ...changes[0]!, second });
    expect(clusters([at(1), at(1.2), at(1.25), at(3)]).map((group) => group.length)).toEqual([2, 1, 1]);
  });

  it('partners come closest where they do', () => {
    expect(closest(changes, 1)!.apart).toBeCloseTo(0.3);
    expect(closest(changes, 2)!.apart).toBe(5);
    expect(closest(changes.slice(0, 1), 2)).toBeNull();
  });

  it('a finding about a desk stands where its two players change', () => {
    const finding = { rule: 'desk/x', place: 'p', measure: 1, seats: ['1o', '1i'] } as unknown as Finding;
    const [place] = findingPlaces([finding, { ...finding, seats: 'all' }], passage);
    expect(place).toMatchObject({ desk: 1 });
    expect(place!.second).toBeCloseTo(3.15);
  });

  it('says the picture in words, with the level of four players of whom one changes', () => {
    const { dL } = bowChangeAudibility([0], 4);
    expect(passageSentence(passage)).toBe(`Four changes of bow by four seats; none on a barline. Partners come closest at desk 1: 0.3 s apart. ${words.section.dips(dL.toFixed(2))}`);
  });

  it('a bow that goes over the end of a line is cut there, as far along the hair as it has come', () => {
    const bows = [bow(0, 8, 'down')];
    const cut = (start: number, end: number) => zigzag(bows, (second) => second, { start, end });
    expect([cut(0, 8), cut(0, 2), cut(2, 8)]).toEqual([`M0.00 0.00L8.00 ${LANE.toFixed(2)}`, `M0.00 0.00L2.00 ${(LANE / 4).toFixed(2)}`, `M2.00 ${(LANE / 4).toFixed(2)}L8.00 ${LANE.toFixed(2)}`]);
    expect(zigzag([bow(0, 4, 'up')], (second) => second, { start: 4, end: 8 })).toBe('');
  });

  it('arrows walk the changes of a desk, and from desk to desk to the nearest in time', () => {
    const first = stepChange(changes, null, 'ArrowRight')!;
    expect(first).toEqual({ second: 1, desk: 2 });
    expect(stepChange(changes, first, 'ArrowRight')).toEqual({ second: 6, desk: 2 });
    expect(stepChange(changes, first, 'ArrowLeft')).toEqual(first);
    expect(stepChange(changes, { second: 6, desk: 2 }, 'ArrowUp')).toEqual({ second: 3.3, desk: 1 });
    expect(stepChange(changes, first, 'ArrowDown')).toEqual(first);
  });

  it('time hangs on the notes: a note lies at its own x, a moment between two notes between them', () => {
    const index = indexPart(smallPart());
    const notes = { P1n1: { x: 10, y: 0, measure: 1 }, P1n3: { x: 20, y: 0, measure: 1 }, P1n5: { x: 40, y: 0, measure: 2 } };
    const x = timeAxis(passage, { width: 80, height: 1, top: 0, bottom: 4, measures: [{ ordinal: 2, x0: 38, x1: 80 }], notes, near: [], high: [], low: [] }, index);
    // Four quarters in four seconds: the third note of the measure sounds at 2 s.
    expect([x(0), x(2), x(1), x(3), x(4), x(8)]).toEqual([10, 20, 15, 30, 40, 80]);
  });
});

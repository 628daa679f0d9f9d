import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../core/agreement/facts.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { emptyState, type AgreementState, type Proposal, type StandingMark } from '../../../core/agreement/state.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { heard, muteOf } from '../../../core/agreement/heard.ts';
import { added } from '../../../client/checking/added.ts';
import { indexPart } from '../../../client/library/partIndex.ts';
import { marksOf } from '../../../client/tools/pencil/signs.ts';
import { nextAfter, openRanges, slipsAt } from '../../../client/views/stand/openMeasures.ts';
import { gone, inked, pencilled } from '../../../client/views/stand/shownMarks.ts';
import { factsSide, slipWindow } from '../../../client/views/stand/slipWindow.ts';
import { rangeOf, withDraft } from '../../../client/views/stand/standing.ts';
import { smallPart } from '../../support/smallPart.ts';

const part = smallPart();
const index = indexPart(part);
const facts = factsOf(part, seatsFor(4));
const stamp = { by: 'p', name: 'Ilse Tarnow', at: '2026-11-25T10:00:00Z', seq: 1 };
const slip = (id: string, from: number, to: number, more: Partial<Proposal> = {}): Proposal => ({ id, letter: id, proposed: stamp, from, to, seats: 'all', why: 'why', marks: [], revision: 1, status: 'open', decided: null, votes: {}, ...more });
const stateWith = (...slips: Proposal[]): AgreementState => ({ ...emptyState(), proposals: Object.fromEntries(slips.map((one) => [one.id, one])) });
const ink = (note: string, finger: 1 | 2, more: Partial<StandingMark> = {}): StandingMark => ({ mark: { note, value: { kind: 'finger', finger } }, seats: 'all', measure: 1, proposal: 'a', why: '', inked: stamp, superseded: null, ...more });

describe('open measures', () => {
  const state = stateWith(slip('b', 2, 2), slip('a', 2, 4), slip('c', 1, 1), slip('d', 3, 3, { status: 'adopted' }));

  it('slips that begin together hang together, by their letters, and what is decided hangs no more', () => {
    expect(openRanges(state).map(({ from, to, slips }) => [from, to, slips.map(({ id }) => id)])).toEqual([[1, 1, ['c']], [2, 4, ['a', 'b']]]);
  });

  it('a slip hangs under every measure it covers', () => {
    expect([1, 2, 3, 4].map((measure) => slipsAt(state, measure).map(({ id }) => id))).toEqual([['c'], ['a', 'b'], ['a'], ['a']]);
  });

  it('the twenty-seventh slip comes after z', () => {
    expect(openRanges(stateWith(slip('aa', 1, 1), slip('z', 1, 1)))[0]!.slips.map(({ id }) => id)).toEqual(['z', 'aa']);
  });

  it('next goes on from here and round to the first', () => {
    expect([nextAfter([3, 7], 3, (n) => n), nextAfter([3, 7], 7, (n) => n), nextAfter([], 1, (n: number) => n)]).toEqual([7, 3, undefined]);
  });
});

describe('marks on the stand', () => {
  it('a draft stands for what it would supersede', () => {
    const state = { ...emptyState(), ink: [ink('P1n1', 1)] };
    expect(withDraft(state, [{ note: 'P1n1', value: { kind: 'finger', finger: 2 } }], 'all', facts)).toEqual([{ note: 'P1n1', value: { kind: 'finger', finger: 2 }, seats: 'all' }]);
  });

  it('a draft on a note that a corrected score no longer has does no harm', () => {
    expect(withDraft(emptyState(), [{ note: 'gone', value: { kind: 'retake' } }], 'all', facts)).toEqual([]);
    expect(rangeOf([{ note: 'gone', value: { kind: 'retake' } }], facts)).toBeNull();
  });

  it('marks reach from the first to the last of their measures', () => {
    expect(rangeOf([{ note: 'P1n9', value: { kind: 'retake' } }, { note: 'P1n2', value: { kind: 'retake' } }], facts)).toEqual({ from: 1, to: 3 });
  });

  it('of ink for single seats, the whole section sees all and a seat its own', () => {
    const standing = [{ note: 'P1n1', value: { kind: 'retake' as const }, seats: ['1o'] }, { note: 'P1n2', value: { kind: 'retake' as const }, seats: 'all' as const }];
    expect(inked(standing, 'all', index)).toHaveLength(2);
    expect(inked(standing, '1i', index).map(({ note }) => note)).toEqual(['P1n2']);
  });

  it('a mark that rubs out is drawn as what it takes away', () => {
    const standing = [{ note: 'P1n1', value: { kind: 'finger' as const, finger: 3 as const }, seats: 'all' as const }];
    expect(pencilled([{ note: 'P1n1', value: { kind: 'none', slot: 'finger' } }], 'all', standing, index)[0]!.rubs).toEqual({ kind: 'finger', finger: 3 });
  });

  it('a bow change that is rubbed out is struck where it lies in its note, not another of the same note', () => {
    const standing = ['1/2', '1/4'].map((after) => ({ note: 'P1n1', value: { kind: 'change' as const, after }, seats: 'all' as const }));
    const [drawn] = pencilled([{ note: 'P1n1', value: { kind: 'none', slot: 'change', after: '1/4' } }], 'all', standing, index);
    expect(drawn).toMatchObject({ rubs: { kind: 'change', after: '1/4' }, share: 0.25 });
  });

  it('the history shows what was set aside and what was replaced, not what stands', () => {
    const state = { ...stateWith(slip('a', 1, 1, { status: 'setAside', marks: [{ note: 'P1n3', value: { kind: 'retake' } }] })), ink: [ink('P1n1', 1, { superseded: { ...stamp, proposal: 'b', why: '' } }), ink('P1n1', 2)] };
    expect(gone(state, index).map(({ note, value }) => [note, value.kind])).toEqual([['P1n3', 'retake'], ['P1n1', 'finger']]);
  });
});

describe('what a sign writes', () => {
  const none = () => [];
  const slurred = indexPart({ ...part, slurs: [{ from: 'P1n1', to: 'P1n3' }] });

  it('fingers go on every note of a passage, a bow sign on its first', () => {
    expect(marksOf({ sign: 'finger', finger: 1 }, ['P1n1', 'P1n2'], index, none, false)).toHaveLength(2);
    expect(marksOf({ sign: 'bow', bow: 'up' }, ['P1n1', 'P1n2'], index, none, false)).toEqual([{ note: 'P1n1', value: { kind: 'bow', bow: 'up' } }]);
  });

  it('a change under a slur comes as the note begins, on the first note of a stroke in its middle', () => {
    expect(marksOf({ sign: 'change' }, ['P1n2'], slurred, none, false)[0]!.value).toEqual({ kind: 'change', after: 0 });
    expect(marksOf({ sign: 'change' }, ['P1n1'], slurred, none, false)[0]!.value).toEqual({ kind: 'change', after: '1/2' });
  });

  it('reach goes round: extension, contraction, none', () => {
    const on = (reach: 'extension' | 'contraction') => () => [{ note: 'P1n1', value: { kind: 'reach' as const, reach } }];
    const write = (standing: () => { note: string; value: { kind: 'reach'; reach: 'extension' | 'contraction' } }[]) => marksOf({ sign: 'reach' }, ['P1n1'], index, standing, false)[0]!.value;
    expect([write(none), write(on('extension')), write(on('contraction'))]).toEqual([{ kind: 'reach', reach: 'extension' }, { kind: 'reach', reach: 'contraction' }, { kind: 'none', slot: 'reach' }]);
  });

  it('a finger after the sign for taking over joins the one that stands, never itself', () => {
    const two = () => [{ note: 'P1n1', value: { kind: 'finger' as const, finger: 2 as const } }];
    const write = (finger: 2 | 3) => marksOf({ sign: 'finger', finger }, ['P1n1'], index, two, true)[0]!.value;
    expect(write(3)).toEqual({ kind: 'finger', finger: 2, substitution: 3 });
    expect(write(2)).toEqual({ kind: 'finger', finger: 2 });
  });
});

describe('what is heard', () => {
  const finding = { rule: 'r', place: 'p', fingerprint: 'f' } as Finding;
  const mute = (more: object) => ({ m: { id: 'm', rule: 'r', place: 'p', reason: 'tried', muted: stamp, fingerprint: 'f', ...more } });

  it('a finding put to rest is silent while the music stands as it was, and speaks when it has changed', () => {
    expect(heard([finding], mute({}))).toEqual([]);
    expect(heard([{ ...finding, fingerprint: 'other' }], mute({}))).toHaveLength(1);
  });

  it('a whole rule put to rest is silent everywhere', () => {
    expect(muteOf({ ...finding, place: 'elsewhere' }, mute({ place: '*', fingerprint: null }))?.id).toBe('m');
  });

  it('a slip brings what was not there before', () => {
    expect(added([finding], [finding, { ...finding, place: 'q' }]).map(({ place }) => place)).toEqual(['q']);
  });
});

describe('slips under their measure', () => {
  const geometry = { width: 100, height: 20, top: 8, bottom: 12, measures: [1, 2, 3].map((ordinal) => ({ ordinal, x0: ordinal * 25 - 25, x1: ordinal * 25 })), notes: {}, near: [], high: [], low: [] };

  it('show every measure of the system that one of them covers, and no more', () => {
    expect(slipWindow(geometry, 2, [])).toEqual({ x0: 25, x1: 50 });
    expect(slipWindow(geometry, 2, [slip('a', 2, 3)])).toEqual({ x0: 25, x1: 75 });
    expect(slipWindow(geometry, 2, [slip('a', 1, 9)])).toEqual({ x0: 0, x1: 75 });
  });

  it('leave the sentences the wider side, or the room below', () => {
    expect(factsSide({ x0: 10, x1: 30 }, 100)).toBe('right');
    expect(factsSide({ x0: 60, x1: 95 }, 100)).toBe('left');
    expect(factsSide({ x0: 0, x1: 90 }, 100)).toBe('below');
  });
});

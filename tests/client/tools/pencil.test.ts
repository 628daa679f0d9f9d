import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { excludes, type Mark, type MarkValue } from '../../../core/music/mark.ts';
import { pencilReducer, startPencil, type Pencil, type PencilAction } from '../../../client/tools/pencil/reducer.ts';

const finger = (note: string, n: 0 | 1 | 2 | 3 | 4): Mark => ({ note, value: { kind: 'finger', finger: n } });
const bow = (note: string, way: 'up' | 'down'): Mark => ({ note, value: { kind: 'bow', bow: way } });
const change = (note: string, after: number | string): Mark => ({ note, value: { kind: 'change', after } });
const write = (...marks: Mark[]): PencilAction => ({ type: 'write', marks });
const after = (actions: PencilAction[], start = startPencil()) => actions.reduce(pencilReducer, start);

const anyValue: fc.Arbitrary<MarkValue> = fc.oneof(
  fc.record({ kind: fc.constant('finger' as const), finger: fc.constantFrom(0, 1, 2, 3, 4) as fc.Arbitrary<0 | 1 | 2 | 3 | 4> }),
  fc.record({ kind: fc.constant('bow' as const), bow: fc.constantFrom('up' as const, 'down' as const) }),
  fc.record({ kind: fc.constant('change' as const), after: fc.constantFrom(0, 1, '1/2') }),
  fc.record({ kind: fc.constant('none' as const), slot: fc.constantFrom('finger' as const, 'change' as const) }),
);
const anyAction: fc.Arbitrary<PencilAction> = fc.oneof(
  fc.array(fc.record({ note: fc.constantFrom('n1', 'n2'), value: anyValue }), { minLength: 1, maxLength: 3 }).map((marks) => write(...marks)),
  fc.constantFrom<PencilAction>({ type: 'undo' }, { type: 'redo' }, { type: 'rub', notes: ['n1'] }, { type: 'hold', held: 'alone' }, { type: 'hold', held: 'propose' }),
);

describe('the pencil', () => {
  it('keeps what it says to different seats on one note side by side, and writes over what it said to the same one', () => {
    const to = (seats: Mark['seats'], mark: Mark): Mark => ({ ...mark, ...(seats ? { seats } : {}) });
    const [outside, inside] = [to(['1o'], bow('n1', 'up')), to(['1i'], bow('n1', 'down'))];
    expect(after([write(outside, inside)]).draft).toEqual([outside, inside]);
    expect(after([write(outside, inside), write(to(['1o', '2o'], bow('n1', 'down')))]).draft).toEqual([inside, to(['1o', '2o'], bow('n1', 'down'))]);
    expect(after([write(outside, inside), write(bow('n1', 'up'))]).draft).toEqual([bow('n1', 'up')]);
  });

  it('writes what is new over what stood in the same place, and beside what stood in another', () => {
    expect(after([write(finger('n', 2)), write(bow('n', 'down')), write(finger('n', 3))]).draft).toEqual([bow('n', 'down'), finger('n', 3)]);
  });

  it('lets several bow changes stand on one long note, each at its own time', () => {
    expect(after([write(change('n', 1)), write(change('n', 2)), write(change('n', 1))]).draft).toHaveLength(2);
  });

  it('moves a change without leaving the old one', () => {
    const first = change('n', 1);
    const moved = after([write(first), { type: 'replace', note: 'n', before: first.value, after: { kind: 'change', after: '3/2' } }]);
    expect(moved.draft).toEqual([change('n', '3/2')]);
  });

  it('keeps what is for me alone apart from what I propose', () => {
    const both = after([write(finger('n', 1)), { type: 'hold', held: 'alone' }, write(finger('n', 4))]);
    expect(both.draft).toEqual([finger('n', 1)]);
    expect(both.alone).toEqual([finger('n', 4)]);
    expect(after([{ type: 'laid' }], both)).toMatchObject({ draft: [], alone: [finger('n', 4)] });
  });

  it('rubs out one note and leaves the next', () => {
    expect(after([write(finger('n1', 1), finger('n2', 2)), { type: 'rub', notes: ['n1'] }]).draft).toEqual([finger('n2', 2)]);
  });

  it('rubbing out where nothing is pencilled takes nothing back later', () => {
    expect(after([write(finger('n1', 1)), { type: 'rub', notes: ['n9'] }, { type: 'undo' }]).draft).toEqual([]);
  });

  it('puts a slip of mine under the pencil again with the pencil that proposes', () => {
    expect(after([{ type: 'hold', held: 'alone' }, { type: 'take', marks: [finger('n', 1)] }])).toMatchObject({ held: 'propose', draft: [finger('n', 1)], alone: [] });
  });

  it('takes back every step one by one to the empty sheet, and writes it all again', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 25 }), (actions) => {
        const end: Pencil = after(actions);
        let back = end;
        for (let i = end.past.length; i > 0; i -= 1) back = pencilReducer(back, { type: 'undo' });
        expect(back).toMatchObject({ draft: [], alone: [] });
        for (let i = 0; i < end.past.length; i += 1) back = pencilReducer(back, { type: 'redo' });
        expect({ draft: back.draft, alone: back.alone }).toEqual({ draft: end.draft, alone: end.alone });
      }),
    );
  });

  it('never holds two marks that exclude each other on one note, so that a slip cannot be refused for it', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 25 }), (actions) => {
        const { draft } = after(actions);
        const pairs = draft.flatMap((one, i) => draft.slice(i + 1).map((other) => [one, other] as const));
        expect(pairs.filter(([one, other]) => one.note === other.note && excludes(one.value, other.value))).toEqual([]);
      }),
    );
  });
});

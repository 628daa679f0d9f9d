import rule from '../../../../core/check/rules/section/arrives-apart.ts';
import { ruleTable, type ShortMark } from '../ruleTable.ts';

const HELD = '{q=60} D5:4~ | D5:4 | E5:4';
const change = (note: string, after: number, ...seats: string[]): ShortMark => [note, { kind: 'change', after }, seats];
const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'everybody changes once', music: HELD, marks: [change('m1n0', 1, '1o'), change('m1n0', 3, '1i'), change('m2n0', 1, '2o'), change('m2n0', 3, '2i')] },
    { title: 'some change twice more than others', music: HELD, marks: [change('m1n0', 1, '1o', '1i'), change('m2n0', 1, '1o', '1i')] },
    { title: 'a sign for all on the bow after it', music: HELD, marks: [change('m1n0', 1, '1o'), ['m3n0', up]] },
    { title: 'a retake for all after it', music: HELD, marks: [change('m1n0', 1, '1o'), ['m3n0', { kind: 'retake' }]] },
    { title: 'a rest after it', music: '{q=60} D5:4~ | D5:3 r:1 | E5:4', marks: [change('m1n0', 1, '1o')] },
    { title: 'opposite bows at the beginning that meet again', music: HELD, marks: [['m1n0', up], ['m1n0', { kind: 'bow', bow: 'down' }, ['1o']], change('m1n0', 1, '1o')] },
    { title: 'the end of the part', music: '{q=60} D5:4~ | D5:4', marks: [change('m1n0', 1, '1o')] },
  ],
  broken: [
    { title: 'one player changes and the others do not', music: HELD, marks: [change('m1n0', 1, '1o')], finds: [{ message: 'apart', severity: 'worthALook', measure: 3, notes: ['m3n0'], seats: ['1o'], text: 'Desk 1 outside and the others arrive in measure 3' }] },
    { title: 'all change once, one twice', music: HELD, marks: [change('m1n0', 1, '1o', '1i'), change('m1n0', 3, '2o', '2i'), change('m2n0', 1, '2i')], finds: [{ message: 'apart', seats: ['2i'] }] },
    { title: 'the same from a marked beginning', music: HELD, marks: [['m1n0', up], change('m1n0', 1, '2o')], finds: [{ message: 'apart', seats: ['2o'] }] },
  ],
});

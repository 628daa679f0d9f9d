import rule from '../../../../core/check/rules/notation/slur-mark-nowhere.ts';
import { ruleTable } from '../ruleTable.ts';

const split = { kind: 'slur', slur: 'split' } as const;
const join = { kind: 'slur', slur: 'join' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a split inside a slur', music: 'D5:1( E5:1 F5:1)', marks: [['m1n1', split]] },
    { title: 'a split on the last note of a slur', music: 'D5:1( E5:1)', marks: [['m1n1', split]] },
    { title: 'a split of a tie', music: 'D5:4~ | D5:4', marks: [['m2n0', split]] },
    { title: 'a join of two separate notes', music: 'D5:1 E5:1', marks: [['m1n0', join]] },
    { title: 'a join of two slurs', music: 'D5:1( E5:1) F5:1( G5:1)', marks: [['m1n1', join]] },
  ],
  broken: [
    { title: 'a split between separate notes', music: 'D5:1 E5:1', marks: [['m1n1', split]], finds: [{ message: 'splitsNothing', severity: 'worthALook', notes: ['m1n1'], seats: 'all' }] },
    { title: 'a split on the first note of a slur', music: 'D5:1( E5:1)', marks: [['m1n0', split, ['1o', '1i']]], finds: [{ message: 'splitsNothing', seats: ['1o', '1i'] }] },
    { title: 'a join in the middle of a slur', music: 'D5:1( E5:1 F5:1)', marks: [['m1n1', join]], finds: [{ message: 'joinsNothing' }] },
    { title: 'a join on the last note of the part', music: 'D5:1( E5:1)', marks: [['m1n1', join]], finds: [{ message: 'joinsNothing' }] },
    { title: 'a join to a plucked note', music: 'D5:1 {pizz} E5:1', marks: [['m1n0', join]], finds: [{ message: 'joinsNothing' }] },
    { title: 'a join over a rest', music: 'D5:1 r:1 E5:1', marks: [['m1n0', join]], finds: [{ message: 'joinsRest' }] },
  ],
});

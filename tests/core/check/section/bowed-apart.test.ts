import rule from '../../../../core/check/rules/section/bowed-apart.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;
const down = { kind: 'bow', bow: 'down' } as const;

ruleTable(rule, {
  holds: [
    { title: 'one direction for all', music: 'D5:1 E5:1', marks: [['m1n0', up]] },
    { title: 'a sign that only one desk has', music: 'D5:1 E5:1', marks: [['m1n0', up, ['1o', '1i']]] },
    { title: 'partners who differ: the desk is told', music: 'D5:1', marks: [['m1n0', up], ['m1n0', down, ['1i']]] },
    { title: 'two directions in a tremolo', music: 'D5:4*', marks: [['m1n0', up, ['1o', '1i']], ['m1n0', down, ['2o', '2i']]] },
  ],
  broken: [
    { title: 'desk against desk', music: 'D5:1 | E5:1', marks: [['m2n0', up], ['m2n0', down, ['2o', '2i']]], finds: [{ message: 'apart', severity: 'worthALook', measure: 2, notes: ['m2n0'], seats: 'all', text: 'desk 1 is marked up-bow and desk 2 down-bow' }] },
    { title: 'two of three desks, the third without a sign', music: 'D5:1', players: 6, marks: [['m1n0', up, ['1o', '1i']], ['m1n0', down, ['3o', '3i']]], finds: [{ message: 'apart', seats: ['1o', '1i', '3o', '3i'] }] },
  ],
});

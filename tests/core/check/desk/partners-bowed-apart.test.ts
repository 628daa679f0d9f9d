import rule from '../../../../core/check/rules/desk/partners-bowed-apart.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;
const down = { kind: 'bow', bow: 'down' } as const;

ruleTable(rule, {
  holds: [
    { title: 'one direction for all', music: 'D5:1 E5:1', marks: [['m1n0', up]] },
    { title: 'a sign that only one of them has', music: 'D5:1 E5:1', marks: [['m1n0', up, ['1o']]] },
    { title: 'two desks against each other, each at one', music: 'D5:1 E5:1', marks: [['m1n0', up, ['1o', '1i']], ['m1n0', down, ['2o', '2i']]] },
    { title: 'partners inside a staggered passage', music: 'D5:2( E5:2 F5:2)', marks: [['m1n1', { kind: 'change', after: 0 }, ['1o']], ['m1n1', down, ['1o']], ['m1n2', { kind: 'change', after: 0 }, ['1i']], ['m1n2', up, ['1i']], ['m1n2', down, ['1o']]] },
    { title: 'players who have no partner', music: 'D5:1', players: 3, marks: [['m1n0', up, ['1o', '1i']], ['m1n0', down, ['2o']]] },
  ],
  broken: [
    { title: 'up for all, down for one partner', music: 'D5:1 E5:1', marks: [['m1n1', up], ['m1n1', down, ['1i']]], finds: [{ message: 'apart', severity: 'collides', notes: ['m1n1'], seats: ['1o', '1i'], text: 'Desk 1: in measure 1' }] },
    { title: 'inside against outside in every desk', music: 'D5:1', marks: [['m1n0', up, ['1o', '2o']], ['m1n0', down, ['1i', '2i']]], finds: [{ message: 'apart', seats: 'all' }] },
  ],
});

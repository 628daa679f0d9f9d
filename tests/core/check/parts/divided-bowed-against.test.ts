import rule from '../../../../core/check/rules/parts/divided-bowed-against.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;
const down = { kind: 'bow', bow: 'down' } as const;

ruleTable(rule, {
  holds: [
    { title: 'both voices one way', music: 'D5:1<up> E5:1 && B4:1<up> C5:1' },
    { title: 'a sign in one voice', music: 'D5:1<up> E5:1 && B4:1 C5:1' },
    { title: 'voices of different rhythm', music: 'D5:1<up> E5:1 && B4:2<down>' },
    { title: 'a held voice under another one', music: 'D5:2( E5:2) && B4:2 C5:2', marks: [['m1n1', { kind: 'change', after: 1 }], ['m1n3', up]] },
  ],
  broken: [
    { title: 'one voice up, the other down', music: 'D5:1 E5:1 && B4:1 C5:1', marks: [['m1n1', up], ['m1n3', down]], finds: [{ message: 'against', severity: 'worthALook', notes: ['m1n1', 'm1n3'], seats: 'all', text: 'up-bow above and down-bow below' }] },
    { title: 'turned for one desk', music: 'D5:1 && B4:1', marks: [['m1n0', down], ['m1n1', down], ['m1n1', up, ['2o', '2i']]], finds: [{ message: 'against', seats: ['2o', '2i'], text: 'desk 2' }] },
  ],
});

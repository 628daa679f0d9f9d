import rule from '../../../../core/check/rules/notation/both-bows-printed.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'one sign', music: 'D5:1<up> E5:1<down>' },
    { title: 'two signs, one of them hidden', music: 'D5:1<up><!down>' },
    { title: 'two signs, the section having marked one', music: 'D5:1<up><down>', marks: [['m1n0', up]] },
  ],
  broken: [
    { title: 'both signs', music: 'D5:1 | E5:1<up><down>', finds: [{ message: 'both', severity: 'worthALook', measure: 2, notes: ['m2n0'], seats: 'all' }] },
    { title: 'both signs, settled for one desk', music: 'D5:1<up><down>', marks: [['m1n0', up, ['1o', '1i']]], finds: [{ message: 'both', seats: ['2o', '2i'] }] },
  ],
});

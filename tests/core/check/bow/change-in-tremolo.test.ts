import rule from '../../../../core/check/rules/bow/change-in-tremolo.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'a direction on a tremolo', music: 'D5:4*<up>' },
    { title: 'a change in a held note beside a tremolo', music: 'D5:4* | E5:4', marks: [['m2n0', { kind: 'change', after: 2 }]] },
    { title: 'a hook between plain notes', music: 'D5:1 E5:1', marks: [['m1n1', { kind: 'hooked' }]] },
  ],
  broken: [
    { title: 'a change in a tremolo', music: 'D5:4*', marks: [['m1n0', { kind: 'change', after: 2 }]], finds: [{ message: 'change', severity: 'worthALook', notes: ['m1n0'], seats: 'all' }] },
    { title: 'a change in a tremolo for one seat', music: 'D5:4*', marks: [['m1n0', { kind: 'change', after: 2 }, ['1o']]], finds: [{ message: 'change', seats: ['1o'] }] },
    { title: 'a hooked tremolo', music: 'D5:2 E5:2*', marks: [['m1n1', { kind: 'hooked' }]], finds: [{ message: 'hook' }] },
  ],
});

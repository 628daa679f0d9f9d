import rule from '../../../../core/check/rules/bow/plucked.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a sign on the first bowed note after plucked ones', music: '{pizz} D5:1 {arco} E5:1', marks: [['m1n1', up]] },
    { title: 'a finger on a plucked note', music: '{pizz} D5:1<3>' },
    { title: 'a printed sign on a plucked note, rubbed out', music: '{pizz} D5:1<up>', marks: [['m1n0', { kind: 'none', slot: 'bow' }]] },
  ],
  broken: [
    { title: 'a sign on a plucked note', music: '{pizz} D5:1 E5:1', marks: [['m1n1', up]], finds: [{ message: 'sign', severity: 'collides', notes: ['m1n1'], seats: 'all', text: 'Write arco' }] },
    { title: 'a sign for one seat', music: '{pizz} D5:1', marks: [['m1n0', up, ['1i']]], finds: [{ message: 'sign', seats: ['1i'] }] },
    { title: 'a printed sign on a plucked note', music: '{pizz} D5:1 | E5:1<down>', finds: [{ message: 'printedSign', severity: 'worthALook', measure: 2 }] },
    { title: 'a retake on a plucked note', music: '{pizz} D5:1', marks: [['m1n0', { kind: 'retake' }]], finds: [{ message: 'manner', severity: 'collides' }] },
    { title: 'a change inside a plucked note', music: '{pizz} D5:2', marks: [['m1n0', { kind: 'change', after: 1 }]], finds: [{ message: 'manner' }] },
  ],
});

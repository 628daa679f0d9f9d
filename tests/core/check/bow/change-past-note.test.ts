import rule from '../../../../core/check/rules/bow/change-past-note.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'a change inside a note', music: 'D5:4', marks: [['m1n0', { kind: 'change', after: 3 }]] },
    { title: 'a change as the note begins', music: 'D5:1( E5:1)', marks: [['m1n1', { kind: 'change', after: 0 }]] },
    { title: 'a late change that was rubbed out', music: 'D5:1', marks: [['m1n0', { kind: 'change', after: 2 }], ['m1n0', { kind: 'none', slot: 'change' }]] },
  ],
  broken: [
    { title: 'a change as late as the end of the note', music: 'D5:2 E5:2', marks: [['m1n0', { kind: 'change', after: 2 }]], finds: [{ message: 'past', severity: 'worthALook', notes: ['m1n0'], seats: 'all', text: 'marked 2 quarters after a note begins that lasts 2 quarters' }] },
    { title: 'a change far after the note, for one seat', music: 'D5:1 E5:2', marks: [['m1n0', { kind: 'change', after: '5/2' }, ['2o']]], finds: [{ message: 'past', seats: ['2o'], text: '2.5 quarters after a note begins that lasts 1 quarter (' }] },
    { title: 'a change inside a grace note', music: '^D5:1 E5:2', marks: [['m1n0', { kind: 'change', after: '1/2' }]], finds: [{ message: 'past', text: 'no time of its own' }] },
  ],
});

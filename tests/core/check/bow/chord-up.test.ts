import rule from '../../../../core/check/rules/bow/chord-up.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a chord after a rest, down', music: '{q=60} r:1 [G3 D4 B4]:1', marks: [['m1n0', { kind: 'bow', bow: 'down' }]] },
    { title: 'a double stop after a rest, up', music: '{q=60} r:1 [D4 B4]:1', marks: [['m1n0', up]] },
    { title: 'a chord among other bows, up', music: '{q=60} D5:1 [G3 D4 B4]:1', marks: [['m1n1', up]] },
    { title: 'a printed up-bow', music: '{q=60} r:1 [G3 D4 B4]:1<up>' },
    { title: 'an up-bow for which the bow is brought back on purpose', music: '{q=60} r:1 [G3 D4 B4]:1', marks: [['m1n0', up], ['m1n0', { kind: 'retake' }]] },
  ],
  broken: [
    { title: 'a chord of three notes after a rest, up', music: '{q=60} D5:1 r:1 [G3 D4 B4]:1', marks: [['m1n1', up]], finds: [{ message: 'up', severity: 'worthALook', notes: ['m1n1'], seats: 'all', text: 'a chord of 3 notes' }] },
    { title: 'the first chord of the part, up, for one desk', music: '{q=60} [G3 D4 B4 G5]:1', marks: [['m1n0', up, ['2o', '2i']]], finds: [{ message: 'up', seats: ['2o', '2i'], text: 'desk 2' }] },
  ],
});

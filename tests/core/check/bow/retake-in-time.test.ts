import rule from '../../../../core/check/rules/bow/retake-in-time.ts';
import { ruleTable } from '../ruleTable.ts';

const retake = { kind: 'retake' } as const;

ruleTable(rule, {
  holds: [
    { title: 'retakes on quarters at 60', music: '{q=60} D5:1 E5:1', marks: [['m1n1', retake]] },
    { title: 'a retake after exactly the time it takes', music: '{q=60} D5:1/5 E5:1', marks: [['m1n1', retake]] },
    { title: 'a retake after a short note and a rest', music: '{q=120} D5:1/4 r:1/2 E5:1', marks: [['m1n1', retake]] },
    { title: 'a retake on the very first note', music: '{q=240} D5:1/4 E5:1', marks: [['m1n0', retake]] },
    { title: 'a fast one in a section that counts on it', music: '{q=120} D5:1/4 E5:1', marks: [['m1n1', retake]], settings: { retakeTime: 0.1 } },
  ],
  broken: [
    { title: 'a retake after a sixteenth at 120', music: '{q=120} D5:1/4 E5:1', marks: [['m1n1', retake]], finds: [{ message: 'tooFast', severity: 'worthALook', notes: ['m1n1'], seats: 'all', text: '0.13 s after the bow before it began (everyone)' }] },
    { title: 'one where no tempo is printed, and the tempo taken is said', music: 'D5:1/4 E5:1', marks: [['m1n1', retake, ['1i']]], finds: [{ message: 'tooFast', seats: ['1i'], text: 'if a quarter goes at 90' }] },
  ],
});

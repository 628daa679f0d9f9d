import rule from '../../../../core/check/rules/notation/marks-disagree.ts';
import { ruleTable } from '../ruleTable.ts';

const hooked = { kind: 'hooked' } as const;
const retake = { kind: 'retake' } as const;
const split = { kind: 'slur', slur: 'split' } as const;
const join = { kind: 'slur', slur: 'join' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a hook alone', music: 'D5:1 E5:1', marks: [['m1n1', hooked]] },
    { title: 'a hook and a direction', music: 'D5:1 E5:1', marks: [['m1n1', hooked], ['m1n1', { kind: 'bow', bow: 'up' }]] },
    { title: 'a split and a retake on one note', music: 'D5:1( E5:1)', marks: [['m1n1', split], ['m1n1', retake]] },
    { title: 'a hooked note that is joined to the next one', music: 'D5:1 E5:1 F5:1', marks: [['m1n1', hooked], ['m1n1', join]] },
    { title: 'a join, and a new bow two notes on', music: 'D5:1( E5:1) F5:1 G5:1', marks: [['m1n1', join], ['m1n3', retake]] },
    { title: 'a change later in the joined note', music: 'D5:1( E5:1) F5:2', marks: [['m1n1', join], ['m1n2', { kind: 'change', after: 1 }]] },
    { title: 'two slurs joined for all, with a bow change of one seat between them', music: 'D5:1( E5:1) F5:1( G5:1)', marks: [['m1n1', join], ['m1n2', { kind: 'change', after: 0 }, ['1o']]] },
    { title: 'a hook for one seat and a retake for another', music: 'D5:1 E5:1', marks: [['m1n1', hooked, ['1o']], ['m1n1', retake, ['1i']]] },
  ],
  broken: [
    { title: 'a hook and a retake on one note', music: 'D5:1 E5:1', marks: [['m1n1', hooked], ['m1n1', retake]], finds: [{ message: 'hookAndRetake', severity: 'collides', notes: ['m1n1'], seats: 'all' }] },
    { title: 'a hook for all, a retake of one seat on top', music: 'D5:1 E5:1', marks: [['m1n1', hooked], ['m1n1', retake, ['1i']]], finds: [{ message: 'hookAndRetake', seats: ['1i'] }] },
    { title: 'a hook and a split', music: 'D5:1( E5:1)', marks: [['m1n1', hooked], ['m1n1', split]], finds: [{ message: 'hookAndSplit' }] },
    { title: 'a hook and a change as the note begins', music: 'D5:1( E5:1)', marks: [['m1n1', hooked], ['m1n1', { kind: 'change', after: 0 }]], finds: [{ message: 'hookAndSplit' }] },
    { title: 'a join to a note where the slur is split', music: 'D5:1( E5:1 F5:1)', marks: [['m1n0', join], ['m1n1', split]], finds: [{ message: 'joinThenNew' }] },
    { title: 'a join to a note with a retake', music: 'D5:1( E5:1) | F5:1', marks: [['m1n1', join], ['m2n0', retake]], finds: [{ message: 'joinThenNew', measure: 2, notes: ['m2n0', 'm1n1'] }] },
  ],
});

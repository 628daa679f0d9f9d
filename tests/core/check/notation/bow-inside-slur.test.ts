import rule from '../../../../core/check/rules/notation/bow-inside-slur.ts';
import { ruleTable } from '../ruleTable.ts';

const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a sign where a slur begins', music: 'D5:1( E5:1)', marks: [['m1n0', up]] },
    { title: 'a sign where the slur is split', music: 'D5:1( E5:1)', marks: [['m1n1', up], ['m1n1', { kind: 'slur', slur: 'split' }]] },
    { title: 'a sign at a bow change', music: 'D5:1( E5:1)', marks: [['m1n1', up], ['m1n1', { kind: 'change', after: 0 }]] },
    { title: 'a printed sign under a phrasing slur', music: 'D5:1( E5:1<up>)' },
    { title: 'a sign on the note after slurred grace notes', music: '^D5:1( E5:1)', marks: [['m1n1', up]] },
  ],
  broken: [
    { title: 'a sign in the middle of a slur', music: 'D5:1( E5:1 F5:1)', marks: [['m1n1', up]], finds: [{ message: 'insideSlur', severity: 'worthALook', notes: ['m1n1'], seats: 'all', text: 'up-bow is marked' }] },
    { title: 'a sign after a grace note that lies under the slur', music: 'D5:1( ^E5:1 F5:1)', marks: [['m1n2', up]], finds: [{ message: 'insideSlur' }] },
    { title: 'a sign in a slur, for one seat', music: 'D5:1( E5:1)', marks: [['m1n1', up, ['1o']]], finds: [{ message: 'insideSlur', seats: ['1o'] }] },
    { title: 'a sign on a tied-over note', music: 'D5:4~ | D5:4', marks: [['m2n0', { kind: 'bow', bow: 'down' }]], finds: [{ message: 'tiedOver', measure: 2, text: 'down-bow' }] },
  ],
});

import rule from '../../../../core/check/rules/notation/retake-inside-slur.ts';
import { ruleTable } from '../ruleTable.ts';

const retake = { kind: 'retake' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a retake where a slur begins', music: 'D5:1( E5:1) F5:1( G5:1)', marks: [['m1n2', retake]] },
    { title: 'a retake on a separate note', music: 'D5:1 E5:1', marks: [['m1n1', retake]] },
    { title: 'a retake where the slur is split as well', music: 'D5:1( E5:1 F5:1)', marks: [['m1n1', retake], ['m1n1', { kind: 'slur', slur: 'split' }]] },
    { title: 'a retake after grace notes', music: 'D5:1 ^E5:1( F5:1)', marks: [['m1n1', retake]] },
    { title: 'a retake on the note that grace notes lead to', music: 'D5:1 ^E5:1 ^D5:1 F5:1', marks: [['m1n3', retake]] },
    { title: 'a retake rubbed out again', music: 'D5:1( E5:1)', marks: [['m1n1', retake], ['m1n1', { kind: 'none', slot: 'retake' }]] },
  ],
  broken: [
    { title: 'a retake on the second note of a slur', music: 'D5:1( E5:1)', marks: [['m1n1', retake]], finds: [{ message: 'insideSlur', severity: 'collides', notes: ['m1n1'], seats: 'all' }] },
    { title: 'a retake after a grace note that lies under the slur', music: 'D5:1( ^E5:1 F5:1)', marks: [['m1n2', retake]], finds: [{ message: 'insideSlur' }] },
    { title: 'a retake for one seat', music: 'D5:1( E5:1)', marks: [['m1n1', retake, ['2i']]], finds: [{ message: 'insideSlur', seats: ['2i'], text: 'desk 2 inside' }] },
    { title: 'a retake on a tied-over note', music: 'D5:4~ | D5:4', marks: [['m2n0', retake]], finds: [{ message: 'tiedOver', measure: 2 }] },
  ],
});

import rule from '../../../../core/check/rules/fingering/tied-over.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'a finger where the note begins', music: 'D5:4~<3> | D5:4' },
    { title: 'another finger on the tied-over note: a substitution', music: 'D5:4~<3> | D5:4<1>' },
    { title: 'a finger on a tied-over note whose beginning bears none', music: 'A4:4~ | A4:4<2>' },
    { title: 'the same finger on a note that is struck again', music: 'D5:4<3> | D5:4<3>' },
    { title: 'the finger that took over on the way', music: 'D5:4~ | D5:4', marks: [['m1n0', { kind: 'finger', finger: 3, substitution: 1 }], ['m2n0', { kind: 'finger', finger: 3 }]] },
  ],
  broken: [
    { title: 'the same finger once more', music: 'D5:4~<3> | D5:4<3>', finds: [{ message: 'again', severity: 'worthALook', measure: 2, notes: ['m2n0', 'm1n0'], seats: 'all', text: 'finger 3 once more' }] },
    { title: 'another string', music: 'D5:4~<III> | D5:4<II>', finds: [{ message: 'otherString', severity: 'cannotPlay', text: 'marked for string II, but it began on string III' }] },
    { title: 'for one seat only', music: 'D5:4~<3> | D5:4', marks: [['m2n0', { kind: 'finger', finger: 3 }, ['1i']]], finds: [{ message: 'again', seats: ['1i'] }] },
  ],
});

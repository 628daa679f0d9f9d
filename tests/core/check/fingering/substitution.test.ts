import rule from '../../../../core/check/rules/fingering/substitution.ts';
import type { Finger } from '../../../../core/music/mark.ts';
import { ruleTable } from '../ruleTable.ts';

const over = (finger: Finger, substitution: Finger) => ({ kind: 'finger', finger, substitution }) as const;

ruleTable(rule, {
  holds: [
    { title: 'one finger taking over from another', music: 'D5:4', marks: [['m1n0', over(3, 1)]] },
    { title: 'the thumb making room', music: 'D5:4', instrument: 'cello', marks: [['m1n0', over(1, 'thumb')]] },
    { title: 'an open string alone', music: 'A4:4<0>' },
  ],
  broken: [
    { title: 'a finger taking over from itself', music: 'D5:4', marks: [['m1n0', over(2, 2)]], finds: [{ message: 'same', severity: 'collides', notes: ['m1n0'], seats: 'all' }] },
    { title: 'a finger taking over from the open string', music: 'A4:4', marks: [['m1n0', over(0, 4), ['1o']]], finds: [{ message: 'open', seats: ['1o'] }] },
    { title: 'the open string taking over from a finger', music: 'A4:4', marks: [['m1n0', over(4, 0)]], finds: [{ message: 'open' }] },
  ],
});

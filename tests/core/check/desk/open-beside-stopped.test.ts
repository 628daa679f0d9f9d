import rule from '../../../../core/check/rules/desk/open-beside-stopped.ts';
import { ruleTable } from '../ruleTable.ts';

const open = { kind: 'finger', finger: 0 } as const;
const fourth = { kind: 'finger', finger: 4 } as const;

ruleTable(rule, {
  holds: [
    { title: 'open for all', music: '{q=60} A4:2', marks: [['m1n0', open]] },
    { title: 'a finger for one, nothing for the other', music: '{q=60} A4:2', marks: [['m1n0', fourth, ['1o']]] },
    { title: 'two fingers that both stop the string', music: '{q=60} A4:2', marks: [['m1n0', fourth], ['m1n0', { kind: 'finger', finger: 3 }, ['1i']]] },
    { title: 'a note too short to be heard open', music: '{q=120} A4:1/2', marks: [['m1n0', open], ['m1n0', fourth, ['1i']]] },
    { title: 'a plucked note', music: '{q=60} {pizz} A4:2', marks: [['m1n0', open], ['m1n0', fourth, ['1i']]] },
    { title: 'desk by desk', music: '{q=60} A4:2', marks: [['m1n0', open], ['m1n0', fourth, ['2o', '2i']]] },
  ],
  broken: [
    { title: 'one partner open, the other with the fourth finger', music: '{q=60} D5:2 | A4:2', marks: [['m2n0', open], ['m2n0', fourth, ['1i']]], finds: [{ message: 'mixed', severity: 'worthALook', measure: 2, notes: ['m2n0'], seats: ['1o', '1i'], text: 'a note of 2 s open' }] },
    { title: 'a printed 0 that one seat has turned into a finger', music: '{q=60} A4:2<0>', marks: [['m1n0', fourth, ['2o']]], finds: [{ message: 'mixed', seats: ['2o', '2i'] }] },
  ],
});

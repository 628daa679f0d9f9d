import rule from '../../../../core/check/rules/section/change-on-barline.ts';
import { ruleTable } from '../ruleTable.ts';

const change = (after: number | string) => ({ kind: 'change', after }) as const;
const LINE = '{p} {q=60} D5:4( | E5:4 | F5:4)';

ruleTable(rule, {
  holds: [
    { title: 'a change inside the measure', music: LINE, marks: [['m2n0', change('1/2'), ['1o']]] },
    { title: 'a change on the barline that all make', music: LINE, marks: [['m2n0', change(0)]] },
    { title: 'a change on the barline that the only player makes', music: LINE, players: 1, marks: [['m2n0', change(0), ['1o']]] },
    { title: 'slurs that end at the barline', music: '{p} {q=60} D5:2( E5:2) | F5:2( G5:2)' },
  ],
  broken: [
    { title: 'one player on the barline under a slur', music: LINE, marks: [['m2n0', change(0), ['1o']]], finds: [{ message: 'onBarline', severity: 'worthALook', measure: 2, notes: ['m2n0'], seats: ['1o'], text: 'Desk 1 outside: the bow change falls on the barline of measure 2' }] },
    { title: 'a split for one seat on the barline', music: LINE, marks: [['m3n0', { kind: 'slur', slur: 'split' }, ['2i']]], finds: [{ message: 'onBarline', measure: 3 }] },
    { title: 'a change one player makes where the rest go on by a join', music: '{p} {q=60} D5:4( | E5:4) | F5:4( | G5:4)', marks: [['m2n0', { kind: 'slur', slur: 'join' }], ['m4n0', change(0), ['1i']]], finds: [{ message: 'onBarline', measure: 4, seats: ['1i'] }] },
  ],
});

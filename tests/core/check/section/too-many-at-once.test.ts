import rule from '../../../../core/check/rules/section/too-many-at-once.ts';
import { ruleTable } from '../ruleTable.ts';

const change = (after: number | string) => ({ kind: 'change', after }) as const;
const LINE = '{p} {q=60} D5:4( | E5:4 | F5:4 | G5:4)';

ruleTable(rule, {
  holds: [
    { title: 'one player of twelve', music: LINE, players: 12, marks: [['m2n0', change(1), ['3o']]] },
    { title: 'one player of four, who always may', music: LINE, players: 4, marks: [['m2n0', change(1), ['2o']]] },
    { title: 'two players of sixteen', music: LINE, players: 16, marks: [['m2n0', change(1), ['1o', '5i']]] },
    { title: 'many players one after the other', music: LINE, players: 4, marks: [['m2n0', change(0), ['1o']], ['m2n0', change('1/4'), ['2o']], ['m2n0', change('1/2'), ['1i']], ['m2n0', change('3/4'), ['2i']]] },
    { title: 'a slur split for everyone', music: LINE, players: 12, marks: [['m3n0', { kind: 'slur', slur: 'split' }]] },
    { title: 'a larger share that the section has set', music: LINE, players: 12, marks: [['m2n0', change(1), ['1o', '2o', '3o']]], settings: { togetherShare: 0.25 } },
  ],
  broken: [
    { title: 'two players of twelve at one moment', music: LINE, players: 12, marks: [['m2n0', change(1), ['1o', '4i']]], finds: [{ message: 'crowd', severity: 'collides', measure: 2, notes: ['m2n0'], seats: ['1o', '4i'], text: /In measure 2 2 players change bow within 0.25 s \(desk 1 outside and desk 4 inside\), where 1 at most/ }] },
    { title: 'three players of sixteen within a quarter of a second', music: LINE, players: 16, marks: [['m2n0', change(1), ['1o']], ['m2n0', change('9/8'), ['2o']], ['m2n0', change('19/16'), ['3o']]], finds: [{ message: 'crowd', seats: ['1o', '2o', '3o'] }] },
    { title: 'a crowd that is fullest after its first change', music: LINE, players: 8, marks: [['m2n0', change(1), ['1o']], ['m2n0', change('19/16'), ['2o']], ['m2n0', change('21/16'), ['3o', '4o']]], finds: [{ message: 'crowd', seats: ['2o', '3o', '4o'] }] },
    { title: 'all but one', music: LINE, players: 4, marks: [['m3n0', change(0), ['1o', '1i', '2o']]], finds: [{ message: 'crowd', measure: 3 }] },
  ],
});

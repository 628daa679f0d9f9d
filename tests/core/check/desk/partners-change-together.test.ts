import rule from '../../../../core/check/rules/desk/partners-change-together.ts';
import { ruleTable } from '../ruleTable.ts';

const change = (after: number | string) => ({ kind: 'change', after }) as const;
/** Four slow measures under one slur, a second to the quarter. */
const LINE = '{pp} {q=60} D5:4( | E5:4 | F5:4 | G5:4)';

ruleTable(rule, {
  holds: [
    { title: 'one slur that nobody breaks', music: LINE },
    { title: 'partners two seconds apart', music: LINE, marks: [['m2n0', change(1), ['1o']], ['m2n0', change(3), ['1i']]] },
    { title: 'a change that all make together', music: LINE, marks: [['m3n0', change(0)]] },
    { title: 'a change that all make together beside changes of their own', music: LINE, marks: [['m3n0', change(0)], ['m2n0', change('3/2'), ['1o']], ['m4n0', change(1), ['1i']]] },
    { title: 'the end of a slur, where everyone changes', music: '{pp} {q=60} D5:4( | E5:4) F5:4( | G5:4)', marks: [['m1n0', change(1), ['1o']], ['m2n1', change(3), ['1i']]] },
    { title: 'two players of different desks at one moment', music: LINE, marks: [['m2n0', change(1), ['1o', '2i']]] },
    { title: 'a desk with one player', music: LINE, players: 3, marks: [['m2n0', change(1), ['2o']], ['m3n0', change(1), ['1o']]] },
    { title: 'a narrower limit that the section has set', music: LINE, marks: [['m2n0', change(1), ['1o']], ['m2n0', change('5/4'), ['1i']]], settings: { partnersApart: 0.2, partnersSubdivision: 0.25 } },
  ],
  broken: [
    { title: 'both players of a desk at one moment', music: LINE, marks: [['m2n0', change(1), ['1o', '1i']]], finds: [{ message: 'sameMoment', severity: 'collides', measure: 2, notes: ['m2n0'], seats: ['1o', '1i'], text: 'Desk 1: both players change bow at the same moment in measure 2' }] },
    { title: 'a quarter of a second apart', music: LINE, marks: [['m2n0', change('7/8'), ['1o']], ['m2n0', change('9/8'), ['1i']]], finds: [{ message: 'tooClose', text: '0.25 s apart' }] },
    { title: 'either side of a barline', music: LINE, marks: [['m2n0', change('15/4'), ['2o']], ['m3n0', change(0), ['2i']]], finds: [{ message: 'tooClose', measure: 2, notes: ['m2n0', 'm3n0'], seats: ['2o', '2i'] }] },
    { title: 'more than half a second apart but in the same eighth', music: LINE.replace('q=60', 'q=20'), marks: [['m2n0', change(1), ['1o']], ['m2n0', change('11/8'), ['1i']]], finds: [{ message: 'sameSubdivision' }] },
    { title: 'a split for one and a change for the other', music: LINE, marks: [['m3n0', { kind: 'slur', slur: 'split' }, ['1o']], ['m3n0', change('1/4'), ['1i']]], finds: [{ message: 'tooClose', measure: 3 }] },
    { title: 'tied notes instead of a slur', music: '{pp} {q=60} D5:4~ | D5:4~ | D5:4', marks: [['m2n0', change(1), ['1o', '1i']]], finds: [{ message: 'sameMoment' }] },
    { title: 'two places where one desk collides', music: LINE, marks: [['m2n0', change(1), ['1o', '1i']], ['m3n0', change(2), ['1o', '1i']]], finds: [{ message: 'sameMoment', measure: 2 }, { message: 'sameMoment', measure: 3 }] },
  ],
});

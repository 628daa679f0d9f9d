import rule from '../../../../core/check/rules/bow/outlasts-bow.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable } from '../ruleTable.ts';

const change = (after: number | string) => ({ kind: 'change', after }) as const;

ruleTable(rule, {
  holds: [
    { title: 'five seconds at mf', music: '{mf} {q=60} D5:4( | E5:1) r:3' },
    { title: 'eight seconds at p', music: '{p} {q=60} D5:4( | E5:4)' },
    { title: 'the same notes under two slurs', music: '{f} {q=60} D5:3( E5:1) | F5:3( E5:1)' },
    { title: 'a held note with a change marked half way', music: '{f} {q=60} D5:6', marks: [['m1n0', change(3)]] },
    { title: 'a slur that a mark has split', music: '{f} {q=60} D5:3( | E5:3)', marks: [['m2n0', { kind: 'slur', slur: 'split' }]] },
    { title: 'a plucked note', music: '{ff} {q=30} {pizz} D5:4' },
    { title: 'a tremolo', music: '{ff} {q=30} D5:4*' },
    { title: 'a phrasing slur over bow slurs', music: { ...phrasing() } },
    { title: 'a longer bow that the section has set', music: '{f} {q=60} D5:6', settings: { bowSeconds: { f: 6 } } },
    { title: 'a forced attack on a soft held note', music: '{fp} {q=60} D5:8' },
  ],
  broken: [
    { title: 'a slur of 14 s at ff', music: '{ff} {q=60} D5:7( | E5:7)', finds: [{ message: 'outOfReach', severity: 'cannotPlay', measure: 1, notes: ['m1n0', 'm2n0'], seats: 'all', text: /14 s at ff, where a bow lasts about 2.5 s \(everyone\):/ }] },
    { title: 'a held note of 6 s at mf', music: '{mf} {q=60} D5:6', finds: [{ message: 'needsMore', severity: 'worthALook', text: 'last 6 s at mf, where a bow lasts about 5.5 s' }] },
    { title: 'tied notes across barlines', music: '{f} {q=60} r:3 D5:1~ | D5:4', finds: [{ message: 'needsMore', measure: 1, notes: ['m1n0', 'm2n0'] }] },
    { title: 'eight seconds at p on a cello, whose bow is shorter', music: '{p} {q=60} D3:4( | E3:4)', instrument: 'cello', finds: [{ message: 'needsMore' }] },
    { title: 'two slurs joined by a mark', music: '{mf} {q=60} D5:3( E5:1) | F5:3( E5:1)', marks: [['m1n1', { kind: 'slur', slur: 'join' }]], finds: [{ message: 'needsMore' }] },
    { title: 'a change too late to help', music: '{f} {q=60} D5:6', marks: [['m1n0', change('11/2')]], finds: [{ message: 'needsMore', text: '5.5 s' }] },
    { title: 'a staggered slur in which one seat has no change', music: '{p} {q=60} D5:6( | E5:6)', players: 2, marks: [['m2n0', change(0), ['1o']]], finds: [{ message: 'needsMore', seats: ['1i'], text: 'desk 1 inside' }] },
    { title: 'an assumed tempo and dynamic, which it says', music: 'D5:9', finds: [{ message: 'needsMore', text: /at mf \(none is printed yet\) if a quarter goes at 90/ }] },
    { title: 'a bass an octave down, at three quarters of a violin bow', music: '{mf} {q=60} G2:5', instrument: 'double-bass', finds: [{ message: 'needsMore' }] },
  ],
});

/** Two slurred pairs of half notes under one outer slur. */
function phrasing() {
  const part = partOf('{f} {q=60} D5:2( E5:1) | F5:2( E5:1)');
  return { ...part, slurs: [...part.slurs, { from: 'm1n0', to: 'm2n1' }] };
}

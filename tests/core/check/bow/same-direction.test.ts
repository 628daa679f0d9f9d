import rule from '../../../../core/check/rules/bow/same-direction.ts';
import { ruleTable } from '../ruleTable.ts';

const down = { kind: 'bow', bow: 'down' } as const;
const up = { kind: 'bow', bow: 'up' } as const;

ruleTable(rule, {
  holds: [
    { title: 'down and up in turn', music: '{q=60} D5:1<down> E5:1<up> F5:1<down>' },
    { title: 'two downs with a retake', music: '{q=60} D5:1 E5:1', marks: [['m1n0', down], ['m1n1', down], ['m1n1', { kind: 'retake' }]] },
    { title: 'two ups with a hook on the second', music: '{q=60} D5:1 E5:1', marks: [['m1n0', up], ['m1n1', up], ['m1n1', { kind: 'hooked' }]] },
    { title: 'two ups with a hook on the first', music: '{q=60} D5:1 E5:1', marks: [['m1n0', up], ['m1n1', up], ['m1n0', { kind: 'hooked' }]] },
    { title: 'two downs with a rest between them', music: '{q=60} D5:1<down> r:1 E5:1<down>' },
    { title: 'two downs with plucked notes between them', music: '{q=60} D5:1<down> {pizz} E5:1 {arco} E5:1<down>' },
    { title: 'two downs with a tremolo between them', music: '{q=60} D5:1<down> E5:1* F5:1<down>' },
    { title: 'a slur that makes the count come out', music: '{q=60} D5:1<down> E5:1( F5:1) G5:1<down>' },
    { title: 'a bow change in a held note that makes the count come out', music: '{q=60} D5:1<down> E5:1 G5:1<up>', marks: [['m1n0', { kind: 'change', after: '1/2' }]] },
    { title: 'grace notes that go with the note after them', music: '{q=60} D5:1<down> ^E5:1 F5:1<up>' },
    { title: 'signs further apart than anyone counts', music: '{q=60} D5:1<down> E5:1 D5:1 E5:1 D5:1 E5:1 D5:1 E5:1 D5:1 E5:1<down>' },
    { title: 'a printed sign turned by a mark', music: '{q=60} D5:1<down> E5:1<down>', marks: [['m1n1', up]] },
    { title: 'a printed sign rubbed out', music: '{q=60} D5:1<down> E5:1<down>', marks: [['m1n1', { kind: 'none', slot: 'bow' }]] },
  ],
  broken: [
    { title: 'two down-bows in a row', music: '{q=60} D5:1 | E5:1', marks: [['m1n0', down], ['m2n0', down]], finds: [{ message: 'twice', severity: 'collides', measure: 2, notes: ['m2n0', 'm1n0'], seats: 'all', text: 'two down-bows' }] },
    { title: 'two slurs that both begin up', music: '{q=60} D5:1( E5:1) F5:1( G5:1)', marks: [['m1n0', up], ['m1n2', up]], finds: [{ message: 'twice' }] },
    { title: 'a sign inside a slur that turns nothing', music: '{q=60} D5:1( E5:1)', marks: [['m1n0', up], ['m1n1', up]], finds: [{ message: 'twice' }] },
    { title: 'two printed down-bows, which often mean a retake', music: '{q=60} D5:1<down> E5:1<down>', finds: [{ message: 'printedTwice', severity: 'worthALook' }] },
    { title: 'a row of printed down-bows, asked about once', music: '{q=60} D5:1<down> E5:1<down> F5:1<down> G5:1<down> | D5:1<up> E5:1<up>', finds: [{ message: 'printedTwice', notes: ['m1n1', 'm1n0'] }, { message: 'printedTwice', notes: ['m2n1', 'm2n0'], text: 'up-bows' }] },
    { title: 'a count across unmarked bows that does not come out', music: '{q=60} D5:1 E5:1 F5:1', marks: [['m1n0', down], ['m1n2', up]], finds: [{ message: 'miscounted', severity: 'worthALook', text: 'the bow arrives down after 1 unmarked bow' }] },
    { title: 'two in a row for one seat', music: '{q=60} D5:1<down> E5:1', marks: [['m1n1', up], ['m1n1', down, ['1i']]], finds: [{ message: 'twice', seats: ['1i'] }] },
    { title: 'a rest too short to bring the bow back', music: '{q=120} D5:1 r:1/4 E5:1', marks: [['m1n0', down], ['m1n1', down]], finds: [{ message: 'twice' }] },
  ],
});

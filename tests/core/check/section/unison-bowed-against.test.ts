import rule from '../../../../core/check/rules/section/unison-bowed-against.ts';
import { ruleTable } from '../ruleTable.ts';

const down = { kind: 'bow', bow: 'down' } as const;
const up = { kind: 'bow', bow: 'up' } as const;

const line = '{q=60} D5:1 E5:1 F5:1 G5:1 | A5:1 G5:1 F5:2';
const octave = '{q=60} D4:1 E4:1 F4:1 G4:1 | A4:1 G4:1 F4:2';
const firsts = (music: string, marks: Parameters<typeof ruleTable>[1]['holds'][number]['marks'] = []) => [{ section: 'Violin 1', music, marks }];
const sixteen = (pitches: string) => `{q=60} ${Array.from({ length: 4 }, () => pitches.split(' ').map((pitch) => `${pitch}:1`).join(' ')).join(' | ')}`;

ruleTable(rule, {
  holds: [
    { title: 'nobody else is known', music: line, marks: [['m1n0', up]] },
    { title: 'both go the same way', music: octave, marks: [['m1n0', down]], others: firsts(line, [['m1n0', down]]) },
    { title: 'only one has signs', music: octave, marks: [['m1n0', down]], others: firsts(line) },
    { title: 'both count to the same way', music: octave, marks: [['m1n0', down]], others: firsts(line, [['m1n1', up]]) },
    { title: 'they have other music', music: '{q=60} D4:2 E4:2 | F4:2 G4:2 | A4:2 B4:2', marks: [['m1n0', up]], others: firsts(line, [['m1n0', down]]) },
    { title: 'they share too few notes', music: '{q=60} D4:1 E4:1 F4:1 G4:1 | C4:4', marks: [['m1n0', up]], others: firsts(line, [['m1n0', down]]) },
    { title: 'one of them plucks', music: `{pizz} ${octave}`, marks: [['m1n0', up]], others: firsts(line, [['m1n0', down]]) },
    { title: 'only one desk of the others is marked so', music: octave, marks: [['m1n0', up]], others: firsts(line, [['m1n0', down, ['2o']]]) },
    { title: 'signs stand further off than anyone counts', music: octave, marks: [['m1n0', down]], others: firsts(line, [['m1n3', down]]), settings: { strokesCounted: 2 } },
    { title: 'a rest breaks the count', music: '{q=60} D4:1 E4:1 F4:1 r:1 | A4:1 G4:1 F4:2 | D4:1', marks: [['m1n0', down]], others: firsts('{q=60} D5:1 E5:1 F5:1 r:1 | A5:1 G5:1 F5:2 | D5:1', [['m2n0', down]]) },
    { title: 'cellos and basses may be reversed', music: octave, instrument: 'double-bass', marks: [['m1n0', up]], others: [{ section: 'Cello', instrument: 'cello', music: octave, marks: [['m1n0', down]] }], settings: { bassesMayReverse: true } },
    { title: 'in one rhythm, but over fewer notes than a rhythm needs', music: '{q=60} B4:1 C5:1 D5:1 E5:1 | F5:1 E5:1 D5:2', marks: [['m1n0', up]], others: firsts(line, [['m1n0', down]]) },
  ],
  broken: [
    { title: 'octaves that begin against each other, named once', music: octave, marks: [['m1n0', up]], others: firsts(line, [['m1n0', down]]), finds: [{ message: 'unison', severity: 'collides', measure: 1, notes: ['m1n0'], seats: 'all', text: 'the bow begins up on D4 and down in Violin 1' }] },
    { title: 'against two sections, told together', music: octave, marks: [['m1n0', up]], others: [...firsts(line, [['m1n0', down]]), { section: 'Viola', instrument: 'viola', music: octave, marks: [['m1n0', down]] }], finds: [{ message: 'unison', text: 'down in Violin 1 and Viola, who play the same' }] },
    { title: 'against a section divided in octaves, named once', music: octave, marks: [['m1n0', up]], others: firsts('{q=60} D5:1 E5:1 F5:1 G5:1 && D4:1 E4:1 F4:1 G4:1 | A5:1 G5:1 F5:2 && A4:1 G4:1 F4:2', [['m1n0', down], ['m1n4', down]]), finds: [{ message: 'unison', text: 'down in Violin 1, who' }] },
    { title: 'cellos and basses, where it is not settled that they may', music: octave, instrument: 'double-bass', marks: [['m1n0', up]], others: [{ section: 'Cello', instrument: 'cello', music: octave, marks: [['m1n0', down]] }], finds: [{ message: 'unison' }] },
    { title: 'a bow that arrives against a marked one', music: octave, marks: [['m1n0', down]], others: firsts(line, [['m2n0', up]]), finds: [{ message: 'counted', severity: 'worthALook', measure: 2, notes: ['m2n0'] }] },
    { title: 'printed signs that disagree', music: octave.replace('D4:1', 'D4:1<up>'), others: firsts(line.replace('D5:1', 'D5:1<down>')), finds: [{ message: 'printed', severity: 'worthALook' }] },
    { title: 'a mark against a printed sign', music: octave, marks: [['m1n0', up]], others: firsts(line.replace('D5:1', 'D5:1<down>')), finds: [{ message: 'unison' }] },
    { title: 'twice, with agreement between', music: octave, marks: [['m1n0', up], ['m1n2', down], ['m2n0', up]], others: firsts(line, [['m1n0', down]]), finds: [{ message: 'unison', measure: 1 }, { message: 'counted', measure: 2 }] },
    { title: 'one rhythm over many notes', music: sixteen('B4 C5 D5 E5'), marks: [['m1n0', up]], others: firsts(sixteen('D5 E5 F5 G5'), [['m1n0', down]]), finds: [{ message: 'rhythm', severity: 'worthALook' }] },
    { title: 'grace notes that take the sign along', music: octave.replace('D4:1', '^C4:1 D4:1'), marks: [['m1n1', up]], others: firsts(line, [['m1n0', down]]), finds: [{ message: 'unison', notes: ['m1n1'] }] },
  ],
});

import rule from '../../../../core/check/rules/section/unison-slurred-otherwise.ts';
import { ruleTable, type ShortMark } from '../ruleTable.ts';

const split = { kind: 'slur', slur: 'split' } as const;
const join = { kind: 'slur', slur: 'join' } as const;

const line = '{q=60} D5:1( E5:1 F5:1 G5:1) | A5:1 G5:1 F5:2';
const octave = '{q=60} D4:1( E4:1 F4:1 G4:1) | A4:1 G4:1 F4:2';
const firsts = (music: string, marks: ShortMark[] = []) => [{ section: 'Violin 1', music, marks }];
const third = (music: string) => music.replaceAll('D4', 'B4').replaceAll('E4', 'C5').replaceAll('F4', 'D5').replaceAll('G4', 'E5').replaceAll('A4', 'F5');
const long = (music: string) => `${music} | ${music.replace('{q=60} ', '')} | ${music.replace('{q=60} ', '')}`;

ruleTable(rule, {
  holds: [
    { title: 'both slurs are whole', music: octave, others: firsts(line) },
    { title: 'both are split alike', music: octave, marks: [['m1n2', split]], others: firsts(line, [['m1n2', split]]) },
    { title: 'they differ in print only', music: octave.replace('E4:1 F4:1', 'E4:1) F4:1('), others: firsts(line) },
    { title: 'a mark brings them together', music: octave.replace('E4:1 F4:1', 'E4:1) F4:1('), others: firsts(line, [['m1n2', split]]) },
    { title: 'only one desk splits its slur', music: octave, others: firsts(line, [['m1n2', split, ['1i']]]) },
    { title: 'the other plucks', music: octave, marks: [['m1n2', split]], others: firsts(`{pizz} ${line}`) },
    { title: 'the music differs', music: '{q=60} D4:1( E4:1 F4:1 G4:1) | C4:1 C4:1 C4:2', marks: [['m1n2', split]], others: firsts(line) },
  ],
  broken: [
    { title: 'a slur split here only', music: octave, marks: [['m1n2', split]], others: firsts(line), finds: [{ message: 'split', severity: 'collides', measure: 1, notes: ['m1n2'], seats: 'all', text: 'a new bow begins on F4' }] },
    { title: 'otherwise than two sections, told together', music: octave, marks: [['m1n2', split]], others: [...firsts(line), { section: 'Viola', music: octave }], finds: [{ message: 'split', text: 'Violin 1 and Viola' }] },
    { title: 'a slur split by the others only', music: octave, others: firsts(line, [['m1n2', split]]), finds: [{ message: 'joined', notes: ['m1n2'] }] },
    { title: 'a slur that goes on here only', music: octave, marks: [['m1n3', join]], others: firsts(line), finds: [{ message: 'joined', measure: 2, notes: ['m2n0'] }] },
    { title: 'a slur taken apart note by note, named once', music: octave, marks: [['m1n1', split], ['m1n2', split], ['m1n3', split]], others: firsts(line), finds: [{ message: 'split', notes: ['m1n1'] }] },
    { title: 'a bow sign under a slur, which splits it', music: octave, marks: [['m1n2', { kind: 'bow', bow: 'up' }]], others: firsts(line), finds: [{ message: 'split' }] },
    { title: 'in one rhythm over many notes', music: long(third(octave)), marks: [['m1n2', split]], others: firsts(long(line)), finds: [{ message: 'split', severity: 'worthALook' }] },
  ],
});

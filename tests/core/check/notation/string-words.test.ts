import rule from '../../../../core/check/rules/notation/string-words.ts';
import type { InstrumentName } from '../../../../core/music/part.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable } from '../ruleTable.ts';

function under(words: string, music: string, instrument: InstrumentName = 'violin', measure = 1) {
  const part = partOf(music, { instrument });
  part.measures[0]!.words.push({ text: words, at: 0 });
  if (measure > 1) part.measures[measure - 1]!.words.push({ text: 'ord.', at: 0 });
  return part;
}

const string = (number: number) => ({ kind: 'string', string: number }) as const;
const MUSIC = 'D5:1 E5:1 | F5:1 G5:1';

ruleTable(rule, {
  holds: [
    { title: 'the string the words name', music: under('sul G', MUSIC), marks: [['m1n1', string(4)]] },
    { title: 'another string once the words have ended', music: under('sul G', MUSIC, 'violin', 2), marks: [['m2n0', string(3)]] },
    { title: 'another string after a rest', music: under('sul G', 'D5:1 r:1 | F5:1 G5:1'), marks: [['m2n0', string(3)]] },
    { title: 'a note the string has not', music: under('sul D', 'D5:1 B3:1 | F5:1'), marks: [['m1n1', string(4)]] },
    { title: 'words about the bow, not the string', music: under('sul ponticello', MUSIC), marks: [['m1n1', string(3)]] },
    { title: 'words for one harmonic', music: under('Flag. sul A', MUSIC), marks: [['m1n1', string(3)]] },
    { title: 'a string the instrument has not', music: under('sul C', MUSIC), marks: [['m1n1', string(3)]] },
  ],
  broken: [
    { title: 'another string under Italian words', music: under('sul G', MUSIC), marks: [['m1n1', string(3)]], finds: [{ message: 'other', severity: 'worthALook', notes: ['m1n1'], seats: 'all', text: 'E5 is marked for string III (everyone), while the words over the passage ask for string IV' }] },
    { title: 'another string under a number', music: under('sulla IVa corda', MUSIC), marks: [['m2n1', string(2), ['1i']]], finds: [{ message: 'other', measure: 2, seats: ['1i'] }] },
    { title: 'another string under German words', music: under('auf der D-Saite', MUSIC), marks: [['m1n0', string(2)]], finds: [{ message: 'other', text: 'ask for string III' }] },
    { title: 'another string under a German number', music: under('4. Saite', MUSIC), marks: [['m1n0', string(2)]], finds: [{ message: 'other', text: 'ask for string IV' }] },
    { title: 'another string under French words', music: under('4e corde', MUSIC), marks: [['m1n0', string(2)]], finds: [{ message: 'other', text: 'ask for string IV' }] },
    { title: 'an open string of another name', music: under('sul D', 'A4:1 B4:1'), marks: [['m1n0', { kind: 'finger', finger: 0 }]], finds: [{ message: 'other', text: 'marked for string II' }] },
    { title: 'a viola, whose fourth string is C', music: under('sul C', 'D4:1 E4:1', 'viola'), marks: [['m1n0', string(3)]], finds: [{ message: 'other', text: 'ask for string IV' }] },
  ],
});

import rule from '../../../../core/check/rules/fingering/one-hand.ts';
import type { MarkValue } from '../../../../core/music/mark.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable, type ShortMark } from '../ruleTable.ts';

/** Finger and string of the two notes of a double stop, lower note first. */
function hold(low: [finger: number | null, string: number | null], high: [finger: number | null, string: number | null]): ShortMark[] {
  return [low, high].flatMap(([finger, string], i) => [
    ...(finger === null ? [] : [[`m1n${i}`, { kind: 'finger', finger } as MarkValue] as ShortMark]),
    ...(string === null ? [] : [[`m1n${i}`, { kind: 'string', string } as MarkValue] as ShortMark]),
  ]);
}

function divided(music: string) {
  const part = partOf(music);
  return { ...part, measures: part.measures.map((measure) => ({ ...measure, words: [{ text: 'div.', at: 0 }] })) };
}

ruleTable(rule, {
  holds: [
    { title: 'a sixth with 1 and 2', music: '[C5 A5]:1', marks: hold([2, null], [3, null]) },
    { title: 'an octave with 1 and 4', music: '[B4 B5]:1', marks: hold([1, null], [4, null]) },
    { title: 'a fingered octave with 1 and 3', music: '[B4 B5]:1', marks: hold([1, null], [3, null]) },
    { title: 'a major tenth with 1 and 4, which is written and played', music: '[B4 D#6]:1', marks: hold([1, 2], [4, 1]) },
    { title: 'a fifth with one finger', music: '[B4 F#5]:1', marks: hold([1, 2], [1, 1]) },
    { title: 'a diminished fifth with one leaning finger', music: '[B4 F5]:1', marks: hold([1, 2], [1, 1]) },
    { title: 'an open string beside a stopped one', music: '[D4 B4]:1', marks: hold([0, null], [1, null]) },
    { title: 'a unison with 0 and 4', music: '[A4 A4]:1', marks: hold([4, 3], [0, 2]) },
    { title: 'a mark on one of the two notes only', music: '[C4 D4]:1', marks: hold([3, 4], [null, null]) },
    { title: 'two players, as the part says', music: divided('[G3 B3]:1'), marks: hold([0, 4], [2, 4]) },
    { title: 'harmonics, where a finger only touches', music: '[D5 A5]:1', marks: [...hold([1, 3], [4, 2]), ['m1n0', { kind: 'harmonic', harmonic: 'natural' }]] },
    { title: 'the thumb across two strings of the cello', music: '[D4 A4]:1', instrument: 'cello', marks: [['m1n0', { kind: 'finger', finger: 'thumb' }], ['m1n1', { kind: 'finger', finger: 'thumb' }]] },
  ],
  broken: [
    { title: 'two notes that only the G string has', music: '[A3 C4]:1', marks: hold([1, null], [3, null]), finds: [{ message: 'oneString', severity: 'cannotPlay', notes: ['m1n0', 'm1n1'], seats: 'all' }] },
    { title: 'strings that are not neighbours', music: '[B3 B4]:1', marks: hold([2, 4], [1, 2]), finds: [{ message: 'apart' }] },
    { title: 'one finger for a major sixth', music: '[B4 G#5]:1', marks: hold([1, 2], [1, 1]), finds: [{ message: 'oneFinger', severity: 'collides' }] },
    { title: 'fingers exchanged in a third', music: '[C5 E5]:1', marks: hold([3, 3], [4, 2]).map(([note, value]): ShortMark => [note, value.kind === 'finger' ? { kind: 'finger', finger: note === 'm1n0' ? 1 : 4 } : value]), finds: [{ message: 'crossed' }] },
    { title: 'a twelfth from 1 to 4 in first position', music: '[B4 F#6]:1', marks: hold([1, 2], [4, 1]), finds: [{ message: 'wide', severity: 'cannotPlay', text: /F sharp 6 with these fingers are \d+ mm apart.* see a licensed clinician\.$/ }] },
    { title: 'for one desk only', music: '[B4 G#5]:1', marks: hold([1, 2], [1, 1]).map(([note, value]): ShortMark => [note, value, ['1o', '1i']]), finds: [{ message: 'oneFinger', seats: ['1o', '1i'] }] },
  ],
});

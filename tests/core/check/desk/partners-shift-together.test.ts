import type { Finger } from '../../../../core/music/mark.ts';
import rule from '../../../../core/check/rules/desk/partners-shift-together.ts';
import { ruleTable, type ShortMark } from '../ruleTable.ts';

const on = (note: string, finger: Finger, string?: number, seats?: string[]): ShortMark[] => [
  [note, { kind: 'finger', finger }, seats],
  ...(string ? [[note, { kind: 'string', string }, seats] as ShortMark] : []),
];
/** From first position up to the fifth on string 2. */
const UP = [...on('m1n0', 1, 2), ...on('m1n1', 2, 2)];

ruleTable(rule, {
  holds: [
    { title: 'nothing is fingered', music: '{p} {q=60} B4:1( G5:1)' },
    { title: 'the same hand place', music: '{p} {q=60} B4:1( E5:1)', marks: [...on('m1n0', 1, 2), ...on('m1n1', 4, 2)] },
    { title: 'a chromatic step of one finger in one position', music: '{pp} {q=60} B4:1( Bb4:1)', marks: [...on('m1n0', 1, 2), ...on('m1n1', 1, 2)] },
    { title: 'the shift falls on a bow change', music: '{p} {q=60} B4:1 G5:1', marks: UP },
    { title: 'one partner changes bow there', music: '{p} {q=60} B4:1( G5:1)', marks: [...UP, ['m1n1', { kind: 'slur', slur: 'split' }, ['1i', '2i']]] },
    { title: 'the partners shift on different notes', music: '{p} {q=60} B4:1( D5:1 G5:1)', players: 2, marks: [...on('m1n0', 1, 2), ...on('m1n1', 1, 2, ['1o']), ...on('m1n1', 3, 2, ['1i']), ...on('m1n2', 4, 2, ['1o']), ...on('m1n2', 2, 2, ['1i'])] },
    { title: 'an open string between', music: '{p} {q=60} B4:1( A4:1 G5:1)', marks: [...on('m1n0', 1, 2), ...on('m1n1', 0), ...on('m1n2', 2, 2)] },
    { title: 'an unmarked note between that may be played open', music: '{p} {q=60} B4:1( A4:1 G5:1)', marks: [...on('m1n0', 1, 2), ...on('m1n2', 2, 2)] },
    { title: 'a short move in forte', music: '{f} {q=60} B4:1( E5:1)', marks: [...on('m1n0', 1, 2), ...on('m1n1', 2, 2)] },
    { title: 'another string on which the hand need not move', music: '{p} {q=60} B4:1( G5:1)', marks: [...on('m1n0', 1), ...on('m1n1', 2)] },
    { title: 'an extended hand on the cello', music: '{p} {q=60} Bb3:1( D4:1)', instrument: 'cello', marks: [...on('m1n0', 1, 1), ...on('m1n1', 4, 1)] },
    { title: 'a threshold that the section has raised', music: '{p} {q=60} B4:1( G5:1)', marks: UP, settings: { shiftScore: 100 } },
  ],
  broken: [
    { title: 'everyone goes up a fourth on one string under a slur, in piano', music: '{p} {q=60} B4:1( G5:1)', marks: UP, finds: [{ message: 'together', severity: 'worthALook', measure: 1, notes: ['m1n1', 'm1n0'], seats: 'all', text: /^Everyone: both partners shift about 7 semitones on the same note, G5 in measure 1/ }] },
    { title: 'one desk alone', music: '{p} {q=60} B4:1( G5:1)', marks: [...on('m1n0', 1, 2, ['2o', '2i']), ...on('m1n1', 2, 2, ['2o', '2i'])], finds: [{ message: 'together', seats: ['2o', '2i'], text: 'Desk 2' }] },
    { title: 'the arrival is marked and the notes between are not', music: '{p} {q=60} B4:1( C5:1 G5:1)', marks: [...on('m1n0', 1, 2), ...on('m1n2', 2, 2)], finds: [{ message: 'together', notes: ['m1n2', 'm1n0'] }] },
    { title: 'on a cello', music: '{pp} {q=60} B3:1( F4:1)', instrument: 'cello', marks: [...on('m1n0', 1, 1), ...on('m1n1', 1, 1)], finds: [{ message: 'together' }] },
    { title: 'on the sounding pitches of a bass', music: '{pp} {q=60} A3:1( D4:1)', instrument: 'double-bass', marks: [...on('m1n0', 1, 1), ...on('m1n1', 1, 1)], finds: [{ message: 'together' }] },
    {
      title: 'many shifts, of which the most exposed three are named',
      music: '{p} {q=60} B4:1( G5:1) | B4:1( F#5:1) | B4:1( E5:1) | B4:1( A5:1)',
      marks: [1, 2, 3, 4].flatMap((measure) => [...on(`m${measure}n0`, 1, 2), ...on(`m${measure}n1`, 1, 2)]),
      finds: [{ message: 'together', measure: 1 }, { message: 'together', measure: 2 }, { message: 'together', measure: 4 }],
    },
  ],
});

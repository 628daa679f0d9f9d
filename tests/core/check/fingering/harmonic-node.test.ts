import rule from '../../../../core/check/rules/fingering/harmonic-node.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'the octave of an open string', music: 'A5:1<harm>' },
    { title: 'a touched fourth, written where the finger is', music: 'C4:1<harm>' },
    { title: 'a harmonic whose string is marked, which another rule reads', music: 'Eb4:1<III><harm>' },
    { title: 'an artificial harmonic that touches a fourth', music: '[B4 E5]:1', marks: [['m1n1', { kind: 'harmonic', harmonic: 'artificial' }]] },
    { title: 'an artificial harmonic that touches a fifth', music: '[B4 F#5]:1', marks: [['m1n1', { kind: 'harmonic', harmonic: 'artificial' }]] },
    { title: 'an artificial harmonic written as it sounds', music: 'B6:1<art>' },
  ],
  broken: [
    { title: 'a natural harmonic that no string has', music: 'Bb3:1<harm> Bb4:1 G#3:1<harm>', finds: [{ message: 'noString', notes: ['m1n2'], severity: 'worthALook', text: 'G sharp 3 is marked as a natural harmonic' }] },
    { title: 'an artificial harmonic that touches a sixth', music: '[B4 G#5]:1', marks: [['m1n1', { kind: 'harmonic', harmonic: 'artificial' }]], finds: [{ message: 'noNode', notes: ['m1n1'], text: '9 semitones above' }] },
    { title: 'an artificial harmonic that touches a tone', music: '[B4 C#5]:1', marks: [['m1n1', { kind: 'harmonic', harmonic: 'artificial' }, ['1o']]], finds: [{ message: 'noNode', seats: ['1o'] }] },
  ],
});

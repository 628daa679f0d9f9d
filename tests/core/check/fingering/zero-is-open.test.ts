import rule from '../../../../core/check/rules/fingering/zero-is-open.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'a 0 on each open string of the violin', music: 'E5:1<0> A4:1<0> D4:1<0> G3:1<0>' },
    { title: 'an open-string sign on an open string', music: 'A4:1<open>' },
    { title: 'a 0 and its own string', music: 'D4:1<0><III>' },
    { title: 'a 0 on the sounding, not the written, pitch of a bass', music: 'G3:1<0> E2:1<0>', instrument: 'double-bass' },
    { title: 'a 0 on a lowest string that the section has set', music: 'C2:1<0>', instrument: 'double-bass', settings: { lowestString: 24 } },
    { title: 'a 0 on a note marked as a harmonic', music: 'D5:1', marks: [['m1n0', { kind: 'finger', finger: 0 }], ['m1n0', { kind: 'harmonic', harmonic: 'natural' }]] },
    { title: 'a stopped finger on a stopped note', music: 'B4:1<1>' },
    { title: 'a printed 0 that a mark has rubbed out', music: 'B4:1<0>', marks: [['m1n0', { kind: 'none', slot: 'finger' }]] },
    { title: 'two figures on one printed note, whose they are nobody can tell', music: '[B4 F5]:1<0+2>' },
    { title: 'a hidden figure', music: 'B4:1<!0>' },
  ],
  broken: [
    {
      title: 'a 0 on a stopped note',
      music: 'r:1 | B4:1',
      marks: [['m2n0', { kind: 'finger', finger: 0 }]],
      finds: [{ message: 'noOpenString', severity: 'cannotPlay', measure: 2, notes: ['m2n0'], seats: 'all', text: 'In measure 2 B4 is fingered 0' }],
    },
    {
      title: 'a 0 on another string than the one that is open at that pitch',
      music: 'A4:1',
      marks: [['m1n0', { kind: 'finger', finger: 0 }], ['m1n0', { kind: 'string', string: 4 }]],
      finds: [{ message: 'stoppedPitch', text: 'string IV, but that string sounds G' }],
    },
    { title: 'a printed 0 on the octave of an open string, which may be a harmonic', music: 'A5:1<0>', finds: [{ message: 'perhapsHarmonic', severity: 'worthALook', text: 'to string II.' }] },
    { title: 'a 0 for one seat only', music: 'C5:1', marks: [['m1n0', { kind: 'finger', finger: 0 }, ['2i']]], finds: [{ message: 'noOpenString', seats: ['2i'] }] },
    { title: 'a 0 on a chord member', music: '[D4 B4]:1', marks: [['m1n1', { kind: 'finger', finger: 0 }]], finds: [{ message: 'noOpenString', notes: ['m1n1'] }] },
  ],
});

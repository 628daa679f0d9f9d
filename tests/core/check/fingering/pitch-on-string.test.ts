import rule from '../../../../core/check/rules/fingering/pitch-on-string.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'an open string on itself', music: 'G3:1<IV>' },
    { title: 'a high position on the lowest string, two octaves up', music: 'G5:1<IV><4>' },
    { title: 'an unusual finger low on the string, which a hand can still do', music: 'Ab3:1<IV><4>' },
    { title: 'an unfingered note below the instrument, which is not about fingers', music: 'C3:1' },
    { title: 'a harmonic that sounds beyond the fingerboard', music: 'G6:1<IV><harm>' },
    { title: 'a touched harmonic', music: 'C5:1', marks: [['m1n0', { kind: 'string', string: 3 }], ['m1n0', { kind: 'harmonic', harmonic: 'artificial' }]] },
    { title: 'a bass on its sounding pitch', music: 'A2:1<III>', instrument: 'double-bass' },
    { title: 'a low C on a bass whose section has set an extension', music: 'C2:1<1>', instrument: 'double-bass', settings: { lowestString: 23 } },
    { title: 'a printed string that a mark has replaced', music: 'D4:1<I>', marks: [['m1n0', { kind: 'string', string: 4 }]] },
  ],
  broken: [
    {
      title: 'a note below the string it is marked for',
      music: 'D4:1',
      marks: [['m1n0', { kind: 'string', string: 2 }], ['m1n0', { kind: 'finger', finger: 1 }]],
      finds: [{ message: 'belowString', severity: 'cannotPlay', seats: 'all', text: 'In measure 1 D4 is marked for string II' }],
    },
    { title: 'three octaves up a string that is not marked as a harmonic', music: 'G6:1<IV>', finds: [{ message: 'beyondFingerboard' }] },
    { title: 'a fingered note below the lowest string', music: 'F3:1<1>', finds: [{ message: 'belowInstrument', text: 'set that string' }] },
    { title: 'a low C on a bass without extension', music: 'C2:1<1>', instrument: 'double-bass', finds: [{ message: 'belowInstrument' }] },
    { title: 'a natural harmonic where the string has none', music: 'Eb4:1<III><harm>', finds: [{ message: 'noSuchHarmonic', severity: 'worthALook' }] },
    {
      title: 'one string for all and another for one seat',
      music: 'D4:1',
      marks: [['m1n0', { kind: 'string', string: 3 }], ['m1n0', { kind: 'string', string: 1 }, ['1i']]],
      finds: [{ message: 'belowString', seats: ['1i'] }],
    },
  ],
});

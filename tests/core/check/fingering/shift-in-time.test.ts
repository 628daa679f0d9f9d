import rule from '../../../../core/check/rules/fingering/shift-in-time.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'an octave shift in slow quarters', music: '{q=60} B4:1<II><1> B5:1<II><1>' },
    { title: 'quick notes within one position', music: '{q=120} B4:1/4<1> C5:1/4<2> D5:1/4<3> E5:1/4<4>' },
    { title: 'quick notes that another string puts under the hand', music: '{q=120} B4:1/4<1> F5:1/4<1>' },
    { title: 'a quick reach of the fourth finger, for which the hand need not move', music: '{q=160} B4:1/4<II><1> F5:1/4<II><4>' },
    { title: 'time enough for the hand while unmarked notes pass', music: '{q=120} B4:1/2<II><1> C5:1/2 D5:1/2 B5:1/2<II><1>' },
    { title: 'an open string between, which frees the hand', music: '{q=120} B4:1/8<II><1> A4:1/8<0> B5:1/8<II><1>' },
    { title: 'a harmonic, touched anywhere', music: '{q=120} B4:1/8<II><1> A5:1/8<II><4><harm>' },
    { title: 'a substitution that leaves the hand where the next note is', music: '{q=120} E5:1<II><1> B4:1/8<II><1>', marks: [['m1n0', { kind: 'finger', finger: 1, substitution: 4 }]] },
    { title: 'a hard shift, which can be made', music: '{q=120} B4:1/4<II><1> E5:1/4<II><1>' },
    { title: 'a quick shift at a tempo that is only assumed', music: 'B4:1/4<II><1> B5:1/4<II><1>' },
    { title: 'grace notes, which have no time of their own', music: '{q=120} ^B4:1<II><1> B5:1<II><1>' },
  ],
  broken: [
    {
      title: 'an octave along one string in a sixty-fourth note',
      music: '{q=60} B4:1/16<II><1> B5:1/16<II><1>',
      finds: [{ message: 'tooFast', severity: 'cannotPlay', measure: 1, notes: ['m1n1', 'm1n0'], seats: 'all', text: /B5 with finger 1 asks for a shift of about 146 mm that needs about 168 ms; there are 63 ms/ }],
    },
    { title: 'the same where the tempo is only assumed', music: 'B4:1/16<II><1> B5:1/16<II><1>', finds: [{ message: 'tooFast', severity: 'worthALook' }] },
    { title: 'a shift a little too quick', music: '{q=90} B4:1/4<II><1> B5:1/4<II><1>', finds: [{ message: 'tooFast', severity: 'worthALook' }] },
    {
      title: 'a hard shift in a section that wants to hear of it',
      music: '{q=120} B4:1/4<II><1> E5:1/4<II><1>',
      settings: { shiftLoad: 0.5 },
      finds: [{ message: 'hard', severity: 'worthALook', text: 'An earlier shift would leave more time.' }],
    },
    {
      title: 'a finger that one seat alone has changed',
      music: '{q=60} B4:1/16<II><1> C5:1/16<II><2>',
      marks: [['m1n1', { kind: 'string', string: 4 }, ['1i']], ['m1n1', { kind: 'finger', finger: 1 }, ['1i']]],
      finds: [{ message: 'tooFast', seats: ['1i'] }],
    },
    { title: 'a cello hand across an octave', music: '{q=60} B3:1/16<I><1> B4:1/16<I><1>', instrument: 'cello', finds: [{ message: 'tooFast' }] },
  ],
});

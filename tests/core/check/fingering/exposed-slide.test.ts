import rule from '../../../../core/check/rules/fingering/exposed-slide.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'the same shift at a change of bow', music: '{p} {q=60} B4:1<II><1> B5:1<II><1>' },
    { title: 'a shift under a slur that another string covers', music: '{p} {q=60} B4:1(<1> F5:1)<1>' },
    { title: 'fingers that stay in the hand', music: '{p} {q=60} B4:1(<II><1> E5:1)<II><4>' },
    { title: 'a fifth that the fourth finger reaches, the hand following later', music: '{p} {q=60} B4:1(<II><1> F5:1)<II><4>' },
    { title: 'a change of finger on one pitch', music: '{p} {q=60} D5:1(<II><3> D5:1)<II><1>' },
    { title: 'a slide that half the section makes while the others stay, under a threshold of certainty', music: '{p} {q=60} C5:1(<II><1> D5:1)<II><1>', settings: { slideHeard: 1 } },
    { title: 'a slur that a mark has split', music: '{p} {q=60} B4:1(<II><1> B5:1)<II><1>', marks: [['m1n1', { kind: 'slur', slur: 'split' }]] },
    { title: 'a note between them, where the hand may move unheard', music: '{p} {q=60} B4:1(<II><1> A4:1 B5:1)<II><1>' },
  ],
  broken: [
    {
      title: 'an octave with one finger on one string, everybody together',
      music: '{p} {q=60} B4:1(<II><1> B5:1)<II><1>',
      finds: [{ message: 'slides', severity: 'worthALook', seats: 'all', notes: ['m1n1', 'm1n0'], text: 'about 12 semitones into B5' }],
    },
    {
      title: 'two of them in a short part: the wider one is named',
      music: '{p} {q=60} B4:1(<II><1> G5:1)<II><1> | B4:1(<II><1> B5:1)<II><1>',
      finds: [{ message: 'slides', measure: 2 }],
    },
    {
      title: 'both of them, where the section asks for more',
      music: '{p} {q=60} B4:1(<II><1> G5:1)<II><1> | B4:1(<II><1> B5:1)<II><1>',
      settings: { slidesAtMost: 100 },
      finds: [{ message: 'slides', measure: 1 }, { message: 'slides', measure: 2 }],
    },
  ],
});

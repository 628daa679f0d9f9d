import rule from '../../../../core/check/rules/fingering/reach.ts';
import { ruleTable } from '../ruleTable.ts';

const EXTENDED = { kind: 'reach', reach: 'extension' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a fifth from 1 to 4, which hands stretch', music: 'B4:1<II><1> F#5:1<II><4>', marks: [['m1n1', EXTENDED]] },
    { title: 'a wide leap that is not marked as an extension: the hand may move', music: 'B4:1<II><1> A5:1<II><4>' },
    { title: 'an extension far from the last fingered note', music: 'B4:1<II><1> C5:1 A5:1<II><4>', marks: [['m1n2', EXTENDED]] },
    { title: 'a wide one that another string makes narrow', music: 'B4:1<1> G5:1<4>', marks: [['m1n1', EXTENDED]] },
    { title: 'the extended hand of the cello', music: 'B3:1<I><1> D#4:1<I><4>', instrument: 'cello', marks: [['m1n1', EXTENDED]] },
  ],
  broken: [
    {
      title: 'a seventh from 1 to 4 in first position',
      music: 'B4:1<II><1> A5:1<II><4>',
      marks: [['m1n1', EXTENDED]],
      finds: [{ message: 'wide', severity: 'worthALook', notes: ['m1n1', 'm1n0'], text: /asks for \d+ mm from finger 1 to finger 4.* see a licensed clinician\.$/ }],
    },
    { title: 'a fifth from 1 to 4 low on the cello', music: 'B3:1<I><1> F#4:1<I><4>', instrument: 'cello', marks: [['m1n1', EXTENDED]], finds: [{ message: 'wide' }] },
    { title: 'for one seat only', music: 'B4:1<II><1> A5:1<II><4>', marks: [['m1n1', EXTENDED, ['1o']]], finds: [{ message: 'wide', seats: ['1o'] }] },
  ],
});

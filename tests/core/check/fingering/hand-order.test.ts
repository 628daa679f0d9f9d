import rule from '../../../../core/check/rules/fingering/hand-order.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'fingers in their order', music: '{q=120} D5:1/4<II><3> C5:1/4<II><2> D5:1/4<II><3>' },
    { title: 'a shift to a lower finger going up, which goes on', music: '{q=120} D5:1/4<II><3> E5:1/4<II><1> F5:1/4<II><2>' },
    { title: 'the same neighbour note in slow notes', music: '{q=50} D5:1<II><3> C5:1<II><4> D5:1<II><3>' },
    { title: 'a neighbour note that lies under the hand on another string', music: '{q=120} E5:1/4<1> D5:1/4<3> E5:1/4<1>' },
    { title: 'a chromatic step with one finger', music: '{q=120} D5:1/4<II><3> C#5:1/4<II><3> D5:1/4<II><3>' },
    { title: 'a note between that bears no finger', music: '{q=120} D5:1/4<II><3> C5:1/4<II> B4:1/4<II><4> D5:1/4<II><3>' },
  ],
  broken: [
    {
      title: 'a lower neighbour with a higher finger, quick and on one string',
      music: '{q=120} E5:1/4<II><2> D5:1/4<II><4> E5:1/4<II><2>',
      finds: [{ message: 'crossed', severity: 'worthALook', notes: ['m1n1', 'm1n0', 'm1n2'], seats: 'all', text: 'D5 bears finger 4' }],
    },
    { title: 'an upper neighbour with a lower finger', music: '{q=120} D5:1/4<II><3> E5:1/4<II><1> D5:1/4<II><3>', finds: [{ message: 'crossed' }] },
    {
      title: 'a slip of one desk alone',
      music: '{q=120} E5:1/4<II><3> D5:1/4<II><2> E5:1/4<II><3>',
      marks: [['m1n1', { kind: 'finger', finger: 4 }, ['2o', '2i']]],
      finds: [{ message: 'crossed', seats: ['2o', '2i'] }],
    },
  ],
});

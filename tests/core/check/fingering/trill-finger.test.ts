import rule from '../../../../core/check/rules/fingering/trill-finger.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable } from '../ruleTable.ts';

function trilled(music: string) {
  const part = partOf(music);
  part.measures[0]!.notes[0]!.ornaments.push('trill-mark');
  return part;
}

ruleTable(rule, {
  holds: [
    { title: 'a trill with the third finger below', music: trilled('D5:2<3>') },
    { title: 'a trill without a finger', music: trilled('E5:2') },
    { title: 'a fourth finger without a trill', music: 'E5:2<4>' },
    { title: 'a fourth finger that gives way before the trill', music: trilled('E5:2'), marks: [['m1n0', { kind: 'finger', finger: 4, substitution: 2 }]] },
  ],
  broken: [
    { title: 'a trill on the fourth finger', music: trilled('E5:2<4>'), finds: [{ message: 'fourth', severity: 'worthALook', notes: ['m1n0'], seats: 'all' }] },
    { title: 'a trill on the fourth finger of one seat', music: trilled('E5:2<2>'), marks: [['m1n0', { kind: 'finger', finger: 4 }, ['1i']]], finds: [{ message: 'fourth', seats: ['1i'] }] },
  ],
});

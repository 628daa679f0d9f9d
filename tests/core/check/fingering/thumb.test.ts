import rule from '../../../../core/check/rules/fingering/thumb.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'the thumb at the half of a cello string', music: 'A4:1<thumb>', instrument: 'cello' },
    { title: 'the thumb on a lower string, where the marks leave it open', music: 'C4:1<thumb>', instrument: 'cello' },
    { title: 'the thumb on the double bass at the octave', music: 'G4:1<thumb>', instrument: 'double-bass' },
    { title: 'the thumb under an artificial harmonic', music: 'B3:1<thumb><art>', instrument: 'cello' },
  ],
  broken: [
    { title: 'the thumb on a violin', music: 'A5:1<thumb>', finds: [{ message: 'holdsTheNeck', severity: 'cannotPlay', seats: 'all' }] },
    { title: 'the thumb on a viola', music: 'A4:1<thumb>', instrument: 'viola', finds: [{ message: 'holdsTheNeck' }] },
    { title: 'the thumb a tone above an open cello string', music: 'B3:1<thumb><I>', instrument: 'cello', finds: [{ message: 'low', severity: 'worthALook', text: 'behind the neck' }] },
  ],
});

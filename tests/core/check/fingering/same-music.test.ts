import rule from '../../../../core/check/rules/fingering/same-music.ts';
import { ruleTable } from '../ruleTable.ts';

const scale = (finger: string, last = 'G5') => `G4:1 A4:1 B4:1 C5:1 | D5:1 E5:1${finger} F5:1 ${last}:1`;
const settings = { sameMusicNotes: 8 };

ruleTable(rule, {
  holds: [
    { title: 'the same finger both times', music: `${scale('<4>')} | r:4 | ${scale('<4>')}`, settings },
    { title: 'a finger the first time only', music: `${scale('<4>')} | r:4 | ${scale('')}`, settings },
    { title: 'the same finger the second and the third time, where nobody fingered the first', music: `${scale('')} | r:4 | ${scale('<4>')} | r:4 | ${scale('<4>')}`, settings },
    { title: 'other fingers in music that goes another way', music: `${scale('<4>')} | r:4 | ${scale('<1>', 'A5')}`, settings },
    { title: 'other fingers where fewer notes are the same than count', music: `${scale('<4>')} | r:4 | ${scale('<1>')}`, settings: { sameMusicNotes: 9 } },
    { title: 'other fingers at the end of the passage, where what follows decides', music: 'G4:1 A4:1 B4:1 C5:1 | D5:1 E5:1 F5:1 G5:1<4> | r:4 | G4:1 A4:1 B4:1 C5:1 | D5:1 E5:1 F5:1 G5:1<1>', settings },
  ],
  broken: [
    {
      title: 'an open E the second time',
      music: `${scale('<4>')} | r:4 | ${scale('<0>')}`,
      settings,
      finds: [{ message: 'differs', severity: 'worthALook', measure: 5, notes: ['m5n1', 'm2n1'], seats: 'all', text: 'in measure 5 E5 bears finger 0, in the same music of measure 2 finger 4' }],
    },
    {
      title: 'the second and the third time, where nobody fingered the first',
      music: `${scale('')} | r:4 | ${scale('<4>')} | r:4 | ${scale('<0>')}`,
      settings,
      finds: [{ message: 'differs', measure: 8, notes: ['m8n1', 'm5n1'], text: 'in the same music of measure 5 finger 4' }],
    },
    {
      title: 'a figure that comes four times over, fingered the second and the last time',
      music: 'D5:1 E5:1 F5:1 G5:1 | D5:1 E5:1<4> F5:1 G5:1 | D5:1 E5:1 F5:1 G5:1 | D5:1 E5:1<1> F5:1 G5:1',
      settings,
      finds: [{ message: 'differs', measure: 4, notes: ['m4n1', 'm2n1'] }],
    },
    {
      title: 'one desk the second time',
      music: `${scale('<4>')} | r:4 | ${scale('<4>')}`,
      settings,
      marks: [['m5n1', { kind: 'finger', finger: 0 }, ['2o', '2i']]],
      finds: [{ message: 'differs', seats: ['2o', '2i'] }],
    },
  ],
});

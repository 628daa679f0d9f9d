import rule from '../../../../core/check/rules/bow/same-music.ts';
import { ruleTable } from '../ruleTable.ts';

const down = { kind: 'bow', bow: 'down' } as const;
const up = { kind: 'bow', bow: 'up' } as const;

const phrase = 'D5:1 E5:1 F5:1 G5:1 | A5:1 G5:1 F5:1 E5:1 | D5:1 F5:1 A5:1 D6:1';
const twice = `{q=60} ${phrase} | r:4 | ${phrase}`;

ruleTable(rule, {
  holds: [
    { title: 'nothing is marked', music: twice },
    { title: 'both begin the same way', music: twice, marks: [['m1n0', down], ['m5n0', down]] },
    { title: 'only one is marked', music: twice, marks: [['m1n0', down]] },
    { title: 'both count to the same way', music: twice, marks: [['m1n0', down], ['m5n1', up]] },
    { title: 'the print gives one of the signs', music: twice.replace('D5:1', 'D5:1<down>'), marks: [['m5n0', up]] },
    { title: 'it begins on another beat', music: `{q=60} ${phrase} | r:1 D5:1 E5:1 F5:1 | G5:1 A5:1 G5:1 F5:1 | E5:1 D5:1 F5:1 A5:1 | D6:1`, marks: [['m1n0', down], ['m4n0', up]] },
    { title: 'the passage is short', music: '{q=60} D5:1 E5:1 F5:1 G5:1 | r:4 | D5:1 E5:1 F5:1 G5:1', marks: [['m1n0', down], ['m3n0', up]] },
    { title: 'some seats only go otherwise', music: twice, marks: [['m1n0', down], ['m5n0', up, ['1i']]] },
  ],
  broken: [
    { title: 'down first and up when it comes again', music: twice, marks: [['m1n0', down], ['m5n0', up]], finds: [{ message: 'differs', severity: 'worthALook', measure: 5, notes: ['m5n0', 'm1n0'], seats: 'all', text: 'In measure 5 D5 is played up-bow, in the same music of measure 1 down-bow' }] },
    { title: 'a count that arrives otherwise', music: twice, marks: [['m1n0', down], ['m5n2', up]], finds: [{ message: 'differs', measure: 5, notes: ['m5n2', 'm1n2'] }] },
  ],
});

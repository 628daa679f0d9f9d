import rule from '../../../../core/check/rules/fingering/open-strings.ts';
import { ruleTable } from '../ruleTable.ts';

const avoided = { openStrings: 'avoided' };
const wanted = { openStrings: 'wanted' };

ruleTable(rule, {
  holds: [
    { title: 'an open string where nothing is settled', music: 'A4:1<0>' },
    { title: 'a stopped A where open strings are avoided', music: 'A4:1<4>', settings: avoided },
    { title: 'the lowest string, which has no other way', music: 'G3:1<0>', settings: avoided },
    { title: 'an open string too short to be told', music: '{q=120} A4:1/4<0>', settings: avoided },
    { title: 'an open string in a double stop', music: '[A4 F5]:1<0>', settings: avoided },
    { title: 'a harmonic', music: 'A5:1<0><harm>', settings: avoided },
    { title: 'a fourth finger where its string is marked', music: 'A4:1<4><III>', settings: wanted },
    { title: 'a stopped note that no open string has', music: 'B4:1<1>', settings: wanted },
  ],
  broken: [
    { title: 'a marked open string in a section that avoids them', music: 'A4:1<0>', settings: avoided, finds: [{ message: 'avoided', severity: 'worthALook', text: 'Stop it on string III' }] },
    { title: 'a fourth finger in a section that wants open strings', music: 'A4:1<4>', settings: wanted, finds: [{ message: 'wanted', text: 'A4 is stopped with finger 4' }] },
    { title: 'one seat against the section', music: 'A4:1<4>', settings: avoided, marks: [['m1n0', { kind: 'finger', finger: 0 }, ['2i']]], finds: [{ message: 'avoided', seats: ['2i'] }] },
  ],
});

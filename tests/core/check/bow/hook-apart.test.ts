import rule from '../../../../core/check/rules/bow/hook-apart.ts';
import { ruleTable } from '../ruleTable.ts';

const hooked = { kind: 'hooked' } as const;
const up = { kind: 'bow', bow: 'up' } as const;
const down = { kind: 'bow', bow: 'down' } as const;

ruleTable(rule, {
  holds: [
    { title: 'a hook to the note before', music: '{q=60} D5:1 E5:1', marks: [['m1n1', hooked]] },
    { title: 'a hook across a short rest', music: '{q=60} D5:3/4 r:1/4 E5:1', marks: [['m1n1', hooked]] },
    { title: 'a hook on the first of two notes', music: '{q=60} D5:1 E5:1', marks: [['m1n0', hooked]] },
    { title: 'a hook and the direction of the bow before', music: '{q=60} D5:1 E5:1', marks: [['m1n0', up], ['m1n1', hooked], ['m1n1', up]] },
    { title: 'a hook that belongs to the same sign after it', music: '{q=60} D5:1 E5:1 F5:1', marks: [['m1n0', down], ['m1n1', up], ['m1n1', hooked], ['m1n2', up]] },
    { title: 'a direction that nobody marked on the bow before', music: '{q=60} D5:1 E5:1', marks: [['m1n1', hooked], ['m1n1', up]] },
  ],
  broken: [
    { title: 'a hook between two long rests', music: '{q=60} D5:1 r:2 E5:1 | r:4 | F5:1', marks: [['m1n1', hooked]], finds: [{ message: 'alone', severity: 'worthALook', notes: ['m1n1'], seats: 'all', text: 'within 1 s' }] },
    { title: 'a hook with a plucked note on either side', music: '{pizz} D5:1 {arco} E5:1 {pizz} F5:1', marks: [['m1n1', hooked, ['1o', '1i']]], finds: [{ message: 'alone', seats: ['1o', '1i'] }] },
    { title: 'a hook that turns the bow', music: '{q=60} D5:1 E5:1', marks: [['m1n0', up], ['m1n1', hooked], ['m1n1', down]], finds: [{ message: 'otherWay', notes: ['m1n1', 'm1n0'], text: 'marked down-bow, but the bow before it goes up' }] },
  ],
});

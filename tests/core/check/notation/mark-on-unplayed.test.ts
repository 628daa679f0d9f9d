import rule from '../../../../core/check/rules/notation/mark-on-unplayed.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable } from '../ruleTable.ts';

const finger = { kind: 'finger', finger: 2 } as const;

function notPlayed(fields: { cue?: true; hidden?: true }) {
  const part = partOf('D5:1<3> E5:1');
  Object.assign(part.measures[0]!.notes[0]!, fields);
  return part;
}

ruleTable(rule, {
  holds: [
    { title: 'marks on played notes', music: 'D5:1 r:1', marks: [['m1n0', finger]] },
    { title: 'what the print bears on a cue', music: notPlayed({ cue: true }) },
    { title: 'what the print bears on a hidden note', music: notPlayed({ hidden: true }) },
    { title: 'a mark on a rest, rubbed out', music: 'r:1 D5:1', marks: [['m1r0', { kind: 'retake' }], ['m1r0', { kind: 'none', slot: 'retake' }]] },
  ],
  broken: [
    { title: 'a mark on a rest', music: 'r:1 D5:1', marks: [['m1r0', { kind: 'retake' }]], finds: [{ message: 'rest', severity: 'worthALook', notes: ['m1r0'], seats: 'all' }] },
    { title: 'a change inside a rest, for one seat', music: 'r:1 D5:1', marks: [['m1r0', { kind: 'change', after: 0 }, ['1i']]], finds: [{ message: 'rest', seats: ['1i'] }] },
    { title: 'another finger on a cue', music: notPlayed({ cue: true }), marks: [['m1n0', finger]], finds: [{ message: 'cue' }] },
    { title: 'another finger on a hidden note', music: notPlayed({ hidden: true }), marks: [['m1n0', finger]], finds: [{ message: 'hidden' }] },
  ],
});

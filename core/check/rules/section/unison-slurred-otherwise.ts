import { besideOthers, type Bowing, type SharedPassage } from '../../besideOthers.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

/** Notes on which one bow begins and the other goes on, though in print they agree; one a row, up to where both begin again. */
function splitsIn(notes: SharedPassage['notes']): Bowing[] {
  const splits: Bowing[] = [];
  let inRow = false;
  notes.forEach(({ own, other }, i) => {
    if (own.marked.begins && other.marked.begins) inRow = false;
    if (i === 0 || inRow || !own.marked.bowed || !other.marked.bowed) return;
    if (own.marked.begins === other.marked.begins || own.printed.begins !== other.printed.begins) return;
    splits.push(own);
    inRow = true;
  });
  return splits;
}

export default defineRule({
  id: 'section/unison-slurred-otherwise',
  severity: 'collides',
  summary: 'Sections that play the same together mark their slurs alike.',
  why: 'Where one section splits a slur and the other does not, the bows part company until both begin together again. Slurs that differ in print are left to the print.',
  source: ['common-practice', 'chosen'],
  messages: {
    split: 'In {where} a new bow begins on {pitch}, while {other}, who play it at the same time, go on with the old one. Mark the slur alike in both, or leave it if it is meant.',
    joined: 'In {where} the bow goes on through {pitch}, while {other}, who play it at the same time, begin a new bow. Mark the slur alike in both, or leave it if it is meant.',
  },
  across(part, report) {
    const found = new Map<string, Bowing & { isUnison: boolean; sections: Set<string> }>();
    for (const { notes, likeness, section } of besideOthers(part)) {
      for (const split of splitsIn(notes)) {
        const { id } = split.event.head;
        const same = found.get(id) ?? { ...split, isUnison: false, sections: new Set<string>() };
        found.set(id, { ...same, isUnison: same.isUnison || likeness === 'unison', sections: same.sections.add(section) });
      }
    }
    for (const { event, marked, isUnison, sections } of found.values()) {
      const { id, pitch, dynamic } = event.head;
      report({
        message: marked.begins ? 'split' : 'joined',
        severity: isUnison ? 'collides' : 'worthALook',
        measure: event.measure,
        notes: [id],
        seats: [],
        exposure: exposureAt(dynamic, part.settings.assumedDynamic),
        besides: [...sections].join(' '),
        facts: { pitch: { pitch: pitch ?? null }, other: { names: [...sections] } },
      });
    }
  },
});

import { besideOthers, type Bowing, type SharedPassage } from '../../besideOthers.ts';
import type { SectionContext } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import type { KnownDirection } from '../../knownDirections.ts';
import { defineRule } from '../../rule.ts';

interface Clash {
  own: Bowing;
  bow: KnownDirection;
  theirs: KnownDirection;
}

/** Where both bows begin on one note and go against each other: the first of each row, since one turned bow turns those after it. */
function clashesIn({ notes }: SharedPassage): Clash[] {
  const clashes: Clash[] = [];
  let inRow = false;
  for (const { own, other } of notes) {
    const [bow, theirs] = [own.marked.known, other.marked.known];
    if (!bow || !theirs) continue;
    const against = bow.direction !== theirs.direction;
    if (against && !inRow) clashes.push({ own, bow, theirs });
    inRow = against;
  }
  return clashes;
}

type Message = 'unison' | 'rhythm' | 'counted' | 'printed';

function messageOf({ bow, theirs }: Clash, { likeness }: SharedPassage): Message {
  if (bow.printed && theirs.printed) return 'printed';
  return bow.counted || theirs.counted ? 'counted' : likeness;
}

const isReversed = (part: SectionContext, { instrument }: SharedPassage): boolean => {
  const pair = [part.part.instrument, instrument];
  return part.settings.bassesMayReverse && pair.includes('cello') && pair.includes('double-bass');
};

export default defineRule({
  id: 'section/unison-bowed-against',
  severity: 'collides',
  summary: 'Sections that play the same together move the bow the same way.',
  why: 'Bows that cross between two sections are seen from the hall, and one line sounds like two. Cellos and basses are sometimes reversed on purpose: a setting allows it.',
  source: ['common-practice', 'chosen'],
  messages: {
    unison: 'In {where} the bow begins {bow} on {pitch} and {theirs} in {other}, who play the same. Turn one of the two round.',
    rhythm: 'In {where} the bow begins {bow} on {pitch} and {theirs} in {other}, who have the same rhythm and slurs. Turn one of the two round, or leave it if it is meant.',
    counted: 'In {where} the bow arrives {bow} on {pitch} and {theirs} in {other}, who play it at the same time. Mark a bow in one of the two so that both go together.',
    printed: 'In {where} the print gives {bow}-bow on {pitch} and {theirs}-bow in {other}, who play it at the same time. Agree on one of the two.',
  },
  across(part, report) {
    const found = new Map<string, Clash & { message: Message; sections: Set<string> }>();
    for (const passage of besideOthers(part)) {
      if (isReversed(part, passage)) continue;
      for (const clash of clashesIn(passage)) {
        const message = messageOf(clash, passage);
        const key = `${message} ${clash.own.event.head.id}`;
        const same = found.get(key);
        if (same) same.sections.add(passage.section);
        else found.set(key, { ...clash, message, sections: new Set([passage.section]) });
      }
    }
    for (const { own, bow, theirs, message, sections } of found.values()) {
      const { id, pitch, dynamic } = own.event.head;
      const exposure = exposureAt(dynamic, part.settings.assumedDynamic);
      report({
        message,
        severity: message === 'unison' ? 'collides' : 'worthALook',
        measure: own.event.measure,
        notes: [id],
        seats: [],
        exposure: message === 'printed' ? exposure / 2 : exposure,
        besides: [bow.direction, ...sections].join(' '),
        facts: { bow: bow.direction, theirs: theirs.direction, other: { names: [...sections] }, pitch: { pitch: pitch ?? null } },
      });
    }
  },
});

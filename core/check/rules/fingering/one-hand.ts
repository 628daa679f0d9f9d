import { markedDoubleStops } from '../../doubleStops.ts';
import { exposureAt } from '../../exposure.ts';
import type { Severity } from '../../finding.ts';
import { type Held, hindrance, type Hindrance } from '../../oneHand.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';

/** Beyond this share of the limit a stretch is called unplayable, not only wide. Chosen, not measured. */
const OUT_OF_REACH = 1.1;

const heldOf = (midi: number, { finger, string }: NoteMarks): Held => ({ midi, ...(finger === undefined ? {} : { finger }), ...(string === undefined ? {} : { string }) });

const severityOf = (found: Hindrance): Severity => (found.kind === 'oneString' ? 'cannotPlay' : found.kind === 'wide' ? (found.mm > found.limit * OUT_OF_REACH ? 'cannotPlay' : 'worthALook') : 'collides');

export default defineRule({
  id: 'fingering/one-hand',
  severity: 'collides',
  summary: 'One hand can hold a double stop as it is marked.',
  why: 'Two notes on one string, a finger in two places or a hand stretched past its limit cannot sound together. Only double stops with a mark on both notes are read, and the easiest choice of what the marks leave open is taken.',
  source: ['tnua', 'davidoff', 'simandl', 'chosen'],
  messages: {
    oneString: 'In {where} {low} and {high} fall on the same string, so they cannot sound together. Give one of them another string, or divide.',
    apart: 'In {where} {low} and {high} are on strings that are not neighbours, so one bow cannot hold both. Choose strings side by side, or divide.',
    oneFinger: 'In {where} {low} and {high} bear the same finger in two different places. Give one of them another finger, or divide.',
    crossed: 'In {where} the fingers on {low} and {high} cross: the higher finger would stand behind the lower one. Exchange them, or choose other strings.',
    wide: 'In {where} {low} and {high} with these fingers are {mm} mm apart. This asks a wider stretch than most published fingerings: other fingers, other strings, or divide. Pain, numbness or loss of control: stop and see a licensed clinician.',
  },
  check(part, report) {
    for (const { event, notes, marks, seats } of markedDoubleStops(part)) {
      const [one, other] = notes;
      if (!one.pitch || !other.pitch) continue;
      const found = hindrance(part.instrument, heldOf(one.sounding ?? one.midi!, marks[0]), heldOf(other.sounding ?? other.midi!, marks[1]));
      if (found === null) continue;
      const [low, high] = one.midi! <= other.midi! ? [one, other] : [other, one];
      const place = {
        measure: event.measure,
        notes: [event.head.id, ...event.notes.slice(1).map(({ id }) => id)],
        seats,
        exposure: exposureAt(event.head.dynamic, part.settings.assumedDynamic),
        severity: severityOf(found),
        place: `${event.head.id}/${marks.map(({ finger, string }) => `${finger ?? ''}.${string ?? ''}`).join('/')}`,
      };
      const facts = { low: { pitch: low.pitch! }, high: { pitch: high.pitch! } };
      if (found.kind === 'wide') report({ ...place, message: 'wide', facts: { ...facts, mm: Math.round(found.mm) } });
      else report({ ...place, message: found.kind, facts });
    }
  },
});

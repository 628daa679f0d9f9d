import { reachOf, zoneOf, type Zone } from '../../../hand/reach.ts';
import { placeOnString } from '../../../hand/place.ts';
import type { Instrument, Millimetres } from '../../../instruments/instrument.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { type MarkedStep, markedSteps } from '../../markedSteps.ts';
import { defineRule } from '../../rule.ts';

interface Span {
  mm: Millimetres;
  zone: Zone;
}

/** The narrowest the two fingers can be apart, over the strings the marks leave open. */
function narrowest(instrument: Instrument, { from, to }: MarkedStep): Span {
  const at = (midi: number, string: number): Millimetres => placeOnString(midi - instrument.openStrings[string - 1]!, instrument.stringLength);
  const spans = from.places.flatMap((a) => to.places.map((b) => Math.abs(at(soundingOf(to.event)!, b.string) - at(soundingOf(from.event)!, a.string))));
  const mm = Math.min(...spans);
  return { mm, zone: zoneOf(reachOf(instrument.name, from.finger, to.finger), mm) };
}

export default defineRule({
  id: 'fingering/reach',
  severity: 'worthALook',
  summary: 'An extension that is marked lies within what hands are known to stretch.',
  why: 'Beyond it few hands of the section will get there, and those that do may pay for it. Only a note marked as an extension, right after a fingered one, is read as a reach: anywhere else the hand may simply move.',
  source: ['tnua', 'davidoff', 'simandl', 'chosen'],
  messages: {
    wide: 'In {where} the extension to {pitch} asks for {mm} mm from finger {from} to finger {to}. This asks a wider stretch than most published fingerings: let the hand follow, or take another string. Pain, numbness or loss of control: stop and see a licensed clinician.',
  },
  check(part, report) {
    for (const step of markedSteps(part)) {
      const { from, to, adjacent } = step;
      if (!adjacent || to.marks.reach !== 'extension' || from.finger === to.finger) continue;
      const { mm, zone } = narrowest(part.instrument, step);
      if (zone !== 'exceptional') continue;
      const { head, measure } = to.event;
      report({
        message: 'wide',
        measure,
        notes: [head.id, from.event.head.id],
        seats: step.seats,
        exposure: exposureAt(head.dynamic, part.settings.assumedDynamic),
        facts: { pitch: { pitch: head.pitch! }, mm: Math.round(mm), from: from.finger, to: to.finger },
      });
    }
  },
});

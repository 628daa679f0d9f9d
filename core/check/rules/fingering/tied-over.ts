import type { BowEvent, Voice } from '../../../bowing/events.ts';
import type { Note } from '../../../music/part.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import { stringNumeral } from '../../words.ts';

/** The note that a tied-over note goes on from, in the event before or one that still sounds. */
function tiedFrom(voice: Voice, at: number, note: Note): { note: Note; event: BowEvent } | null {
  const before = voice[at - 1];
  const held = before?.notes.find((other) => other.midi === note.midi && other.ties.includes('start'));
  return before && held && Math.abs(before.to - voice[at]!.from) < 1e-6 ? { note: held, event: before } : null;
}

export default defineRule({
  id: 'fingering/tied-over',
  severity: 'worthALook',
  summary: 'A note that is tied over bears no finger or string of its own.',
  why: 'It is sounding already. The same finger again says nothing and is mostly meant for the next note; another string cannot be reached while the note is held. Another finger is left alone: that is a substitution.',
  source: ['common-practice'],
  messages: {
    again: 'In {where} {pitch} is tied over and bears finger {finger} once more. It says nothing new: rub it out, or put it on the note it is meant for.',
    otherString: 'In {where} {pitch} is tied over and marked for string {string}, but it began on string {began}. A held note cannot change its string: break the tie, or begin on string {string}.',
  },
  check(part, report) {
    part.voices.forEach((voice) =>
      voice.forEach((event, at) => {
        for (const note of event.notes) {
          if (!note.ties.includes('stop') || !note.pitch) continue;
          const start = tiedFrom(voice, at, note);
          if (!start) continue;
          const readings = new Map<string, (typeof part.groups)[number]['seats']>();
          for (const { seats, marksOn } of part.groups) {
            const [first, now] = [marksOn(start.note.id), marksOn(note.id)];
            const again = now.finger !== undefined && now.substitution === undefined && now.finger === (first.substitution ?? first.finger) ? String(now.finger) : '';
            const strings = now.string !== undefined && first.string !== undefined && now.string !== first.string ? `${stringNumeral(first.string)}>${stringNumeral(now.string)}` : '';
            if (again || strings) readings.set(`${again}|${strings}`, [...(readings.get(`${again}|${strings}`) ?? []), ...seats]);
          }
          for (const [reading, seats] of readings) {
            const [finger, strings] = reading.split('|') as [string, string];
            const [began, string] = strings.split('>') as [string, string | undefined];
            const place = { measure: event.measure, notes: [note.id, start.note.id], seats, exposure: exposureAt(note.dynamic, part.settings.assumedDynamic), place: `${note.id}/${reading}` };
            const pitch = { pitch: note.pitch };
            if (string !== undefined) report({ ...place, message: 'otherString', severity: 'cannotPlay', facts: { pitch, string, began } });
            else report({ ...place, message: 'again', facts: { pitch, finger } });
          }
        }
      }),
    );
  },
});

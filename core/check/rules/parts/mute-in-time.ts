import { quarters } from '../../../music/time.ts';
import { exposureAt } from '../../exposure.ts';
import { muteWord } from '../../muteWords.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'parts/mute-in-time',
  severity: 'worthALook',
  summary: 'Where mutes go on or come off there is a silence long enough for it.',
  why: 'Without one the section stops before its last note has ended or begins the next one late; desks that take turns leave no hole.',
  source: ['common-practice', 'chosen'],
  messages: {
    on: 'In {where} mutes go on with {seconds} s of silence{tempo}, where a section needs about {needed} s. Agree which desks put them on first.',
    off: 'In {where} mutes come off with {seconds} s of silence{tempo}, where a section needs about {needed} s. Agree which desks take them off first.',
  },
  across(part, report) {
    const { muteTime, assumedDynamic, assumedTempo } = part.settings;
    const words = part.part.measures.flatMap(({ start, words: texts }) => texts.map(({ text, at }) => ({ from: quarters(start) + quarters(at), muted: muteWord(text) })));
    const events = part.voices.flat();
    let now = false;
    for (const { from, muted } of words.sort((a, b) => a.from - b.from)) {
      if (muted === null || muted === now) continue;
      now = muted;
      const before = events.filter((event) => event.from < from - 1e-6);
      const next = events.filter((event) => event.from >= from - 1e-6).sort((a, b) => a.from - b.from)[0];
      if (!before.length || !next) continue;
      const last = before.reduce((latest, event) => (event.to > latest.to ? event : latest));
      const seconds = Math.max(0, next.start - last.end);
      if (seconds >= muteTime - 1e-6) continue;
      report({
        message: muted ? 'on' : 'off',
        measure: next.measure,
        notes: [next.head.id, last.head.id],
        seats: [],
        exposure: exposureAt(next.head.dynamic, assumedDynamic) / 2,
        facts: { seconds: Math.round(seconds * 10) / 10, needed: muteTime, tempo: part.tempo.isAssumed(last.from) ? { assumedTempo } : '' },
      });
    }
  },
});

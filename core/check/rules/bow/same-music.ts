import { playedAnywhere } from '../../../matching/anywhere.ts';
import { type Line, linesOf } from '../../../matching/line.ts';
import type { Run } from '../../../matching/run.ts';
import type { Part } from '../../../music/part.ts';
import type { BowAtEvent } from '../../bowsOnLine.ts';
import { exposureAt } from '../../exposure.ts';
import { ownBows } from '../../ownBows.ts';
import { defineRule } from '../../rule.ts';

const matched = new WeakMap<Part, { least: number; runs: Run[] }>();

function runsIn(part: Part, least: number): Run[] {
  const before = matched.get(part);
  if (before?.least === least) return before.runs;
  const runs = playedAnywhere(part, part, { unison: least, rhythm: Infinity });
  matched.set(part, { least, runs });
  return runs;
}

const byMark = ({ known }: BowAtEvent): 'up' | 'down' | null => (known && !known.printed ? known.direction : null);

/** The first note of the later passage that is bowed against the earlier one by signs that somebody marked. */
function firstAgainst({ a, b, notes }: Run, bows: readonly BowAtEvent[][]): number | null {
  for (let i = 0; i < notes.length; i += 1) {
    const [then, now] = [byMark(bows[a.line]![a.first + i]!), byMark(bows[b.line]![b.first + i]!)];
    if (then && now && then !== now) return i;
  }
  return null;
}

const onSameBeat = (lines: readonly Line[], { a, b }: Run): boolean => lines[a.line]![a.first]!.at === lines[b.line]![b.first]!.at;

export default defineRule({
  id: 'bow/same-music',
  severity: 'worthALook',
  summary: 'The same music in one part is bowed the same way.',
  why: 'A passage that comes again is played from habit. Only bows that somebody has marked, or that follow from such a mark, are compared, where the music begins on the same beat, and each passage is named once.',
  source: ['common-practice', 'chosen'],
  messages: {
    differs: 'In {where} {pitch} is played {bow}-bow, in the same music of {before} {other}-bow. Use one bowing for both, or leave it if the difference is wanted.',
  },
  across(part, report) {
    const lines = linesOf(part.part);
    const { marked } = ownBows(part);
    if (!marked.some((line) => line.some((bow) => byMark(bow)))) return;
    for (const run of runsIn(part.part, part.settings.sameMusicNotes)) {
      const at = onSameBeat(lines, run) ? firstAgainst(run, marked) : null;
      if (at === null) continue;
      const [model, event] = [lines[run.a.line]![run.a.first + at]!, lines[run.b.line]![run.b.first + at]!];
      const [other, bow] = [byMark(marked[run.a.line]![run.a.first + at]!)!, byMark(marked[run.b.line]![run.b.first + at]!)!];
      report({
        message: 'differs',
        measure: event.measure,
        notes: [event.head.id, model.head.id],
        seats: [],
        exposure: exposureAt(event.head.dynamic, part.settings.assumedDynamic),
        facts: { pitch: { pitch: event.head.pitch ?? null }, bow, other, before: { measure: model.measure } },
      });
    }
  },
});

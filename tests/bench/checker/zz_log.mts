import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { marked, scores, SEATS } from './marked.ts';
import { appendFileSync, writeFileSync } from 'node:fs';
const out = process.argv[2]!; writeFileSync(out,'');
for await (const { file, parts } of scores()) for (const part of parts) {
  const others = parts.filter((o) => o !== part).map((o) => ({ section: o.name, part: o, marks: [], seats: SEATS }));
  const check = standingCheck({ part, seats: SEATS, settings: {} });
  const bare = check.findings([], others);
  const t = process.cpuUsage().user;
  const { marks, passages } = marked(part, (some) => check.findings(some));
  const own = check.findings(marks, others);
  const notes = new Set(own.flatMap((f) => f.notes));
  appendFileSync(out, JSON.stringify({ file: String((file as any).path ?? (file as any).file ?? file), part: part.name, measures: part.measures.length, ms: (process.cpuUsage().user - t) / 1000, planned: passages.flatMap((x) => x.marks).length, bare: bare.map(({ rule, text, measure }) => ({ rule, text, measure })), own: own.map(({ rule, text, measure, notes, seats }) => ({ rule, text, measure, notes, seats })), marks: marks.filter((m) => notes.has(m.note)) }) + '\n');
}

import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { playedAnywhere } from '../../../core/matching/anywhere.ts';
import { isTremolo } from '../../../core/bowing/strokes.ts';
import { slurredNotes } from '../../../core/music/slurredNotes.ts';
import { scores, SEATS } from './marked.ts';
for await (const { file, parts } of scores()) { if (!new RegExp(process.argv[2]!).test(file)) continue;
  for (const part of parts.filter((p) => p.name === (process.argv[3] ?? p.name))) {
    const notes = new Map(part.measures.flatMap((m) => m.notes.map((n) => [n.id, n] as const)));
    const meas = new Map(part.measures.flatMap((m) => m.notes.map((n) => [n.id, m.ordinal] as const)));
    const inSlur = slurredNotes(part);
    const check = standingCheck({ part, seats: SEATS, settings: {} });
    const isFree = (id: string) => { const n = notes.get(id)!; return !inSlur.has(id) && !n.pizzicato && !isTremolo(n) && !n.ties.includes('stop') && !n.technical.length; };
    const runs = playedAnywhere(part, part, { unison: 16, rhythm: 1e9 }).filter((r) => r.a.line === r.b.line && notes.get(r.notes[0]![0])!.onset === notes.get(r.notes[0]![1])!.onset);
    let [bow, bowMiss, fin, finMiss] = [0, 0, 0, 0];
    for (const run of runs.slice(0, 40)) {
      const free = run.notes.slice(1, -1).filter(([a, b]) => a !== b && isFree(a) && isFree(b) && notes.get(a)!.onset === notes.get(b)!.onset);
      const exact = run.notes.every(([a, b]) => notes.get(a)!.midi === notes.get(b)!.midi);
      const where = (p: readonly [string, string]) => `run a ${meas.get(run.notes[0]![0])}-${meas.get(run.notes.at(-1)![0])} b ${meas.get(run.notes[0]![1])}-${meas.get(run.notes.at(-1)![1])} n=${run.notes.length} pair ${run.notes.findIndex((x) => x[0] === p[0])} ${p} m${meas.get(p[0])}/${meas.get(p[1])} ${JSON.stringify({ ...run, notes: 0 })}`;
      if (free.length) { const p = free[free.length >> 1]!; bow++; const f = check.findings([{ note: p[0], value: { kind: 'bow', bow: 'down' } }, { note: p[1], value: { kind: 'bow', bow: 'up' } }]); if (!f.some((x) => x.rule === 'bow/same-music')) { bowMiss++; console.log('BOW', where(p)); } }
      const fing = run.notes.slice(4, -4).filter(([a, b]) => a !== b && exact && notes.get(a)!.midi !== undefined && !notes.get(a)!.grace);
      if (fing.length) { const p = fing[fing.length >> 1]!; fin++; const f = check.findings([{ note: p[0], value: { kind: 'finger', finger: 2 } }, { note: p[1], value: { kind: 'finger', finger: 3 } }]); if (!f.some((x) => x.rule === 'fingering/same-music')) { finMiss++; console.log('FIN', where(p)); } }
    }
    console.log(file.slice(-25), part.name, runs.length, 'bow', bow, 'missed', bowMiss, 'fingers', fin, 'missed', finMiss);
  } }

import { scores } from './marked.ts';
import { bowEvents } from '../../../core/bowing/events.ts'; import { tempoMap } from '../../../core/music/seconds.ts';
import { repeatedRuns } from '../../../core/check/repeatedRuns.ts'; import { playedAnywhere } from '../../../core/matching/anywhere.ts';
for await (const { file, parts } of scores()) { if (!/Beach/.test(file)) continue; const p = parts.find((x) => x.name === 'Viola')!;
 bowEvents(p, tempoMap(p, 90)).forEach((v, k) => { for (const r of repeatedRuns(v, 12)) if (v[r.second]!.measure >= 88 && v[r.second]!.measure < 98) console.log(k, r, v[r.first]!.measure, v[r.second]!.measure, v[r.first]!.head.id); });
 for (const r of playedAnywhere(p, p, { unison: 12, rhythm: Infinity })) console.log({ ...r, notes: r.notes.length }); 
 console.log(p.measures.slice(90, 96).map((m) => m.ordinal + ': ' + m.notes.map((n) => (n.rest ? 'r' : n.pitch!.step + n.pitch!.octave) + (n.chord ? '+' : '') + ':' + n.duration + 'v' + n.voice).join(' ')).join('\n')); break; }

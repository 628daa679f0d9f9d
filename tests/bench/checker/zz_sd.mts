import { bows, scores, SEATS } from './marked.ts';
import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
const [re, which, rule, ...idx] = process.argv.slice(2);
for await (const {file,parts} of scores()) { if(!new RegExp(re!).test(JSON.stringify(file))) continue;
 const part=parts.find(p=>p.name===which)!; const {strokes,marks}=bows(part);
 const f=standingCheck({part,seats:SEATS,settings:{}}).findings(marks).filter(x=>x.rule===rule);
 console.log(f.length); for(const i of idx) { const x=f[+i]; if(!x) continue; console.log('#',i,x.measure,x.text);
 for(const m of part.measures.filter(m=>Math.abs(m.ordinal-x.measure)<=1)) console.log(m.ordinal,m.notes.map(n=>`${n.id.slice(-6)}:${n.pitch?n.pitch.step+n.pitch.octave:'r'}${n.grace?'g':''}${n.chord?'+':''}v${n.voice} ${n.onset}/${n.duration} ${n.ties} ${n.technical} ${n.pizzicato?'pz':''} ${n.articulations} ${n.ornaments} ${marks.filter(k=>k.note===n.id).map(k=>JSON.stringify(k.value)).join(' ')}${x.notes.includes(n.id)?' <<<':''}`).join('\n  '));
 strokes.forEach((s,v)=>console.log(v,s.filter(y=>Math.abs(y.measure-x.measure)<=1).map(y=>`${y.measure} ${y.begins.toFixed(2)}-${y.ends.toFixed(2)} ${y.direction} ${(y as any).repeats??''} ${(y as any).split??''} ${y.notes.length}`).join('\n ')));
 } break; }

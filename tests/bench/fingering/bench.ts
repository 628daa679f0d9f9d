import { join } from 'node:path';
import { celloPlaces } from '../../../core/fingering/celloPlaces.ts';
import type { Weights } from '../../../core/fingering/fit/chain.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import { prepare } from '../../../core/fingering/prepare.ts';
import { violinPlaces } from '../../../core/fingering/violinPlaces.ts';
import { cello } from '../../../core/instruments/cello.ts';
import type { Instrument } from '../../../core/instruments/instrument.ts';
import { violin } from '../../../core/instruments/violin.ts';
import { loadDuport } from './duport.ts';
import { lessonOf } from './lesson.ts';
import { best, corrections, impossible, requestFor, sharesOf, shiftCounts, topThree, withFirstNotes, type Taken } from './measures.ts';
import type { Piece } from './pieces.ts';
import { loadTnua } from './tnua.ts';
import { SHRINK, train } from './train.ts';
import { loadYtvf } from './ytvf.ts';

const SEED = 1;
const folder = process.env.CORPUS_DIR;
if (!folder) throw new Error('Set CORPUS_DIR to the folder that holds fingering/tnua, fingering/ytvf and fingering/cello-duport.');
const quick = process.argv.includes('--quick');

const onViolin = (note: LineNote): Place[] => violinPlaces(note.midi, note.step);
const onCello = (note: LineNote): Place[] => celloPlaces(note.midi);
const percent = (part: number, whole: number): string => ((100 * part) / whole).toFixed(1).padStart(6);

function lowest(piece: Piece, placesOf: (note: LineNote) => Place[]): Taken {
  const height = (place: Place): number => place.position + (place.finger === 0 ? 0 : 0.1 + 0.3 * Math.abs(place.off) + 0.3 * Math.abs(place.respelled));
  return piece.line.map((note) => placesOf(note).reduce<Place | null>((low, place) => (low === null || height(place) < height(low) ? place : low), null));
}

function report(name: string, instrument: Instrument, pieces: Piece[], takenOf: (piece: Piece) => Taken): void {
  const sum = { string: 0, position: 0, finger: 0, triple: 0, notes: 0 };
  let [macro, none] = [0, 0];
  const shifts = { both: 0, ours: 0, theirs: 0 };
  for (const piece of pieces) {
    const taken = takenOf(piece);
    const shares = sharesOf(piece, taken);
    for (const key of Object.keys(sum) as (keyof typeof sum)[]) sum[key] += shares[key];
    macro += shares.triple / shares.notes / pieces.length;
    none += impossible(instrument, piece, taken);
    const found = shiftCounts(piece, taken);
    for (const key of Object.keys(shifts) as (keyof typeof shifts)[]) shifts[key] += found[key];
    console.log(`    ${piece.name.padEnd(40)} ${percent(shares.triple, shares.notes)}`);
  }
  console.log(`${name.padEnd(44)} string${percent(sum.string, sum.notes)} position${percent(sum.position, sum.notes)} finger${percent(sum.finger, sum.notes)} triple${percent(sum.triple, sum.notes)} macro${percent(macro, 1)} shift F1${percent(2 * shifts.both, shifts.ours + shifts.theirs)} impossible ${none}`);
}

function people(pieces: Piece[]): void {
  let [hits, notes] = [0, 0];
  for (const { players } of pieces) players.forEach((one, a) => players.slice(a + 1).forEach((other) => one.forEach((label, i) => {
    const second = other[i];
    if (!label || !second) return;
    notes += 1;
    if (label.string === second.string && label.position === second.position && label.finger === second.finger) hits += 1;
  })));
  console.log(`two professionals with each other             triple${percent(hits, notes)}`);
}

const tnua = loadTnua(join(folder, 'fingering/tnua'));
const ytvf = loadYtvf(join(folder, 'fingering/ytvf'));
const duport = loadDuport(join(folder, 'fingering/cello-duport'));
const lessons = new Map([...tnua.map((piece) => [piece.name, lessonOf(piece, 1, onViolin)] as const), ...ytvf.map((piece) => [piece.name, lessonOf(piece, 0.5, onViolin)] as const), ...duport.map((piece) => [piece.name, lessonOf(piece, 1, onCello)] as const)]);
const lessonsOf = (pieces: Piece[]) => pieces.map((piece) => lessons.get(piece.name)!);

/** Weights that have not seen the work. */
function withoutWork(pieces: Piece[], others: Piece[], shrink: number): Map<string, Weights> {
  const works = [...new Set(pieces.map((piece) => piece.work))];
  return new Map(works.map((work) => [work, train([...lessonsOf(others), ...lessonsOf(pieces.filter((piece) => piece.work !== work))], SEED, shrink)]));
}

console.log('Violin, ten professionals, leave one work out');
report('always the lowest position', violin, tnua, (piece) => lowest(piece, onViolin));
report("the hand's costs, untuned, cheapest path", violin, tnua, (piece) => best(prepare(requestFor(violin, piece, null))));
const held = withoutWork(tnua, ytvf, SHRINK.violin);
const prepared = new Map(tnua.map((piece) => [piece.name, prepare(requestFor(violin, piece, held.get(piece.work)!))]));
report('fitted chain', violin, tnua, (piece) => best(prepared.get(piece.name)!));
people(tnua);
if (!quick) {
  const total = { three: 0, threeOf: 0, first: 0, firstOf: 0, made: 0, outside: 0, madeOf: 0 };
  for (const piece of tnua) {
    const ready = prepared.get(piece.name)!;
    const [three, first, corrected] = [topThree(piece, ready), withFirstNotes(piece, ready), corrections(piece, ready)];
    total.three += three.hits;
    total.threeOf += three.notes;
    total.first += first.hits;
    total.firstOf += first.notes;
    total.made += corrected.made;
    total.outside += corrected.outside;
    total.madeOf += corrected.notes;
  }
  console.log(`among the three likeliest                     ${percent(total.three, total.threeOf)}`);
  console.log(`first note of each measure settled, others    ${percent(total.first, total.firstOf)}`);
  console.log(`corrections a 100 notes                       ${percent(total.made, total.madeOf)}, of them ${percent(total.outside, total.madeOf).trim()} for labels that are no place of the engine`);
  console.log('\nViolin, one performer each, fitted on the ten professionals alone');
  const alone = train(lessonsOf(tnua), SEED, SHRINK.violin);
  report('fitted chain', violin, ytvf, (piece) => best(prepare(requestFor(violin, piece, alone))));
}
console.log('\nCello, one edition, leave one study out');
report('always the lowest position', cello, duport, (piece) => lowest(piece, onCello));
report("the hand's costs, untuned, cheapest path", cello, duport, (piece) => best(prepare(requestFor(cello, piece, null))));
const studies = withoutWork(duport, [], SHRINK.cello);
report('fitted chain', cello, duport, (piece) => best(prepare(requestFor(cello, piece, studies.get(piece.work)!))));

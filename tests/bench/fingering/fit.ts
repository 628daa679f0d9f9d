import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { celloPlaces } from '../../../core/fingering/celloPlaces.ts';
import { violinPlaces } from '../../../core/fingering/violinPlaces.ts';
import { loadDuport } from './duport.ts';
import { lessonOf } from './lesson.ts';
import { loadTnua } from './tnua.ts';
import { SHRINK, train } from './train.ts';
import { loadYtvf } from './ytvf.ts';

const SEED = 1;
const WEIGHT_OF_ONE_PERFORMER = 0.5;
const folder = process.env.CORPUS_DIR;
if (!folder) throw new Error('Set CORPUS_DIR to the folder that holds fingering/tnua, fingering/ytvf and fingering/cello-duport.');
const out = join(import.meta.dirname, '../../../core/fingering/weights');

function write(name: string, constant: string, weights: Int8Array, card: string): void {
  const text = Buffer.from(weights.buffer).toString('base64');
  writeFileSync(join(out, `${name}.ts`), `/** Fitted by tests/bench/fingering/fit.ts; see ${name}.md. One signed byte a slot, base64. */\nexport const ${constant} =\n  '${text}';\n`);
  writeFileSync(join(out, `${name}.md`), card);
}

const tnua = loadTnua(join(folder, 'fingering/tnua'));
const ytvf = loadYtvf(join(folder, 'fingering/ytvf'));
const onViolin = { tnua: tnua.map((piece) => lessonOf(piece, 1, (note) => violinPlaces(note.midi, note.step))), ytvf: ytvf.map((piece) => lessonOf(piece, WEIGHT_OF_ONE_PERFORMER, (note) => violinPlaces(note.midi, note.step))) };
const date = process.argv[2] ?? 'undated';
write(
  'violin',
  'VIOLIN_WEIGHTS',
  train([...onViolin.tnua, ...onViolin.ytvf], SEED, SHRINK.violin),
  `# Violin weights\n\n- Model: log-linear chain over places, templates of core/fingering/fit/features, 2^18 hashed slots, one signed byte each (hundredths).\n- Data: ${tnua.length} excerpts fingered by ten professionals (${tnua.reduce((sum, piece) => sum + piece.line.length, 0)} notes), ${ytvf.length} pieces of one performer each (${ytvf.reduce((sum, piece) => sum + piece.line.length, 0)} notes, weight ${WEIGHT_OF_ONE_PERFORMER}). The data are not part of this project.\n- Fit: maximum likelihood of the players' places and steps, AdaGrad, 24 epochs, shrinkage ${SHRINK.violin}, seed ${SEED}.\n- Split for the figures: never a work in training that is measured; run \`npm run bench:fingering\`.\n- Metric: share of notes on which string, position and finger are all those of a professional, mean over the ten.\n- Date: ${date}\n- Not meant for: judging a player; music far from solo repertoire of the 18th to early 20th century is outside the data.\n`,
);
const duport = loadDuport(join(folder, 'fingering/cello-duport'));
write(
  'cello',
  'CELLO_WEIGHTS',
  train(duport.map((piece) => lessonOf(piece, 1, (note) => celloPlaces(note.midi))), SEED, SHRINK.cello),
  `# Cello weights\n\n- Model: as for the violin, over the closed, extended and thumb hand.\n- Data: ${duport.length} studies with one edition's fingering (${duport.reduce((sum, piece) => sum + piece.line.length, 0)} notes). The data are not part of this project.\n- Fit: as for the violin, shrinkage ${SHRINK.cello}, seed ${SEED}.\n- Split for the figures: leave one study out; run \`npm run bench:fingering\`.\n- Date: ${date}\n- Not meant for: music far from studies of the early 19th century.\n`,
);

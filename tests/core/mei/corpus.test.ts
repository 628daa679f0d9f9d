import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import createVerovioModule from 'verovio/wasm';
import { enableLog, LOG_ERROR, VerovioToolkit } from 'verovio/esm';
import { describe, expect, it } from 'vitest';
import { musicXmlFromMei } from '../../../core/mei/musicXmlFromMei.ts';
import { CORPUS, corpusPath } from '../../support/corpus.ts';
import { schemaErrors } from '../../support/libxml.ts';

/** Scores that say how every note sounds, as the engraver needs to be told. */
const SCORES = ['Bach-JS_BrandenburgConcert_No4_II_BWV1049', 'Borodin_StringTrio_g-minor', 'Debussy_GolliwoggsCakewalk', 'Mozart_Quintett_KV581'];

type Player = VerovioToolkit & { renderToTimemap(): { qstamp: number; on?: string[] }[]; getMIDIValuesForElement(id: string): { pitch: number } };

/** When each key sounds, in quarters, as the engraver plays a document. */
async function sounds(text: string): Promise<string[]> {
  const module = await createVerovioModule();
  enableLog(LOG_ERROR, module);
  const toolkit = new VerovioToolkit(module) as Player;
  toolkit.setOptions({ expandNever: true });
  expect(toolkit.loadData(text)).toBeTruthy();
  return toolkit.renderToTimemap().flatMap(({ qstamp, on }) => (on ?? []).map((id) => `${qstamp.toFixed(3)} ${toolkit.getMIDIValuesForElement(id).pitch}`)).sort();
}

describe.skipIf(!CORPUS)('published scores in MEI (needs CORPUS_DIR)', { timeout: 240_000 }, () => {
  it.each(SCORES)('%s: every note sounds at the time and pitch at which verovio plays the MEI itself; what is written fits the MusicXML schema', async (name) => {
    const text = readFileSync(corpusPath(`mei-samples/${name}.mei`), 'utf8');
    const made = musicXmlFromMei(text);
    if (!made.ok) throw new Error(made.fault.text);
    const played = await sounds(text);
    expect(played.length).toBeGreaterThan(100);
    expect(await sounds(made.text)).toEqual(played);
    expect([...schemaErrors(Buffer.from(made.text), join(CORPUS ?? '', 'musicxml-4.0-schema'))]).toEqual([]);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { isUnderWay, type ImportView } from '../../../core/agreement/wire/imports.ts';
import { CORPUS } from '../../support/corpus.ts';

const EVERY_MS = 1000;
const TOLD_EVERY = 10;

function files(): string[] {
  if (!CORPUS) throw new Error('CORPUS_DIR names the folder of scores; it is not set.');
  return readdirSync(join(CORPUS, 'scores'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(musicxml|xml|mxl|mei)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted();
}

/** Sends every file as a work of its own, none waiting for another to be read. */
export async function sendAll(address: string, cookie: string, programme: string): Promise<number> {
  const all = files();
  for (const path of all) {
    const form = new FormData();
    form.append('file', new Blob([readFileSync(path)]), basename(path));
    const reply = await fetch(`${address}/api/programmes/${programme}/works`, { method: 'POST', headers: { cookie, prefer: 'respond-async' }, body: form });
    if (reply.status !== 202) throw new Error(`${path}: ${reply.status} ${await reply.text()}`);
  }
  return all.length;
}

/** Asks how far they are until all have ended, and tells it now and then. */
export async function followImports(address: string, cookie: string, memory: () => number): Promise<ImportView[]> {
  for (let round = 0; ; round++) {
    const views = (await (await fetch(`${address}/api/imports`, { headers: { cookie } })).json()) as ImportView[];
    const left = views.filter(isUnderWay);
    if (round % TOLD_EVERY === 0 || left.length === 0) {
      const at = left.find(({ step }) => step !== 'waiting');
      console.log(`${views.length - left.length} of ${views.length} done, ${at ? `${at.files[0]!.fileName}: step ${at.done} of ${at.of}, ` : ''}server ${memory()} MB`);
    }
    if (left.length === 0) return views;
    await new Promise((resolve) => setTimeout(resolve, EVERY_MS));
  }
}

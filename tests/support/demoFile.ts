import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoScore } from '../../server/demo/score/writeScore.ts';

let path: string | undefined;

/** The demo's score as a file. */
export function demoFile(): string {
  if (!path) {
    path = join(mkdtempSync(join(tmpdir(), 'bowline-print-')), 'low-water.musicxml');
    writeFileSync(path, demoScore());
  }
  return path;
}

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bowEvents } from '../../../core/bowing/events.ts';
import { strokeFacts } from '../../../core/bowing/direction/facts.ts';
import { strokesOf, type Direction, type Stroke } from '../../../core/bowing/strokes.ts';
import { printedMarks } from '../../../core/check/printedMarks.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import type { Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { openFile } from '../../../server/files/openFile.ts';
import type { BowLine } from './lines.ts';

const ASSUMED_TEMPO = 90;

/** The sign on a bow's first sounding note. */
function signOn(stroke: Stroke): Direction | null {
  const head = (stroke.pieces.find(({ event }) => !event.head.grace) ?? stroke.pieces[0]!).event.head;
  const bow = printedMarks(head).find(({ kind }) => kind === 'bow');
  return bow?.kind === 'bow' ? bow.bow : null;
}

/** Bows as they are without the printed signs, and the signs themselves. */
export function linesOf(piece: string, part: Part): BowLine[] {
  return bowEvents(part, tempoMap(part, ASSUMED_TEMPO)).map((voice) => {
    const facts = strokeFacts(part, strokesOf(voice, () => ({ changes: [] })), 'mf', () => 0);
    return { piece, facts, given: facts.map(({ stroke }) => signOn(stroke)) };
  });
}

/** Every part of the scores in a folder that prints bow signs, one line a voice. */
export async function printedLines(folder: string): Promise<BowLine[]> {
  const lines: BowLine[] = [];
  for (const name of readdirSync(folder).filter((file) => /\.(mxl|musicxml)$/.test(file)).sort()) {
    const file = await openFile(new Uint8Array(readFileSync(join(folder, name))), name);
    if (!file.ok) throw new Error(`${name}: ${file.fault.text}`);
    const read = readScore(file.text);
    if (!read.ok) throw new Error(`${name}: ${read.fault.text}`);
    for (const { part } of read.parts) lines.push(...linesOf(name.replace(/\..*/, ''), part).filter(({ given }) => given.some((direction) => direction !== null)));
  }
  return lines;
}

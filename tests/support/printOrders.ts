import { readFileSync } from 'node:fs';
import type { ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import { isStringPart } from '../../core/music/part.ts';
import { seatsFor } from '../../core/music/seat.ts';
import { readScore } from '../../core/musicxml/readScore.ts';
import { marksOnCopy, readerWords, type Reader } from '../../core/print/copy.ts';
import { fillDemo } from '../../server/demo/fillDemo.ts';
import { openFile } from '../../server/files/openFile.ts';
import { createAuthority } from '../../server/operations/authority.ts';
import type { StoredPart } from '../../server/store/library.ts';
import type { PrintOrder } from '../../server/print/order.ts';
import { chance as chanceOf } from './chance.ts';
import { denseMarks } from './denseMarks.ts';
import { inMemory } from './oneEnsemble.ts';

const LOOK = { paper: 'a4', margins: 'usual', staff: 7.5, fingerings: 'all', form: 'pdf', at: '2026-11-26T09:00:00Z' } as const;

/** The demo's part of a section as it is to be printed for a reader, with what its section has agreed. */
export async function demoOrder(section: string, reader: Reader, more: Partial<PrintOrder> = {}): Promise<PrintOrder> {
  const { store, authority, parts } = await (demo ??= filledDemo());
  const part = parts.find(({ content }) => content.name === section)!;
  const { state } = (await authority.current(part.id))!;
  const seats = (await store.sections.byId(part.section!))!.seats.map(({ seat }) => seat);
  const source = (await store.library.source(part.edition))!;
  const { title, composer } = part.work;
  const heading = { title, composer, instrument: part.content.name, seat: readerWords(reader), edition: 'Edition 1, printed 26 November 2026' };
  return { ...source, part: part.content.id, stored: part.content, marks: marksOnCopy(state, reader, seats), heading, ...LOOK, ...more };
}

let demo: ReturnType<typeof filledDemo> | undefined;

async function filledDemo() {
  const store = await inMemory();
  const authority = createAuthority(store);
  await fillDemo({
    store, authority,
    signInLink: async () => '',
    async layScore(programme, { bytes, fileName }, by) {
      const read = readScore(new TextDecoder().decode(bytes));
      if (!read.ok) throw new Error(read.fault.text);
      const sections = await store.sections.all();
      const parts = read.score.parts.map((content) => ({ content, section: sections.find(({ name }) => name === content.name)?.id ?? null }));
      return (await store.library.addWork(programme, { title: read.score.title, composer: read.score.composer }, { bytes, fileName, by: by.id, at: new Date() }, parts))!;
    },
  });
  const work = (await store.library.programmes())[0]!.works[0]!;
  const parts: StoredPart[] = await store.library.partsOf(work.id);
  return { store, authority, parts };
}

/** A part of any score file, by its id or its place among the string parts with measures, written full of marks for two seats of a desk where `seed` is given. */
export async function fileOrder(path: string, which: string | number, seed: number | null, more: Partial<PrintOrder> = {}): Promise<PrintOrder> {
  const bytes = readFileSync(path);
  const file = await openFile(bytes, path);
  if (!file.ok) throw new Error(file.fault.text);
  const read = readScore(file.text);
  if (!read.ok) throw new Error(read.fault.text);
  const strings = read.score.parts.filter(isStringPart).filter(({ measures }) => measures.length > 0);
  const stored = typeof which === 'number' ? strings[which]! : read.score.parts.find(({ id }) => id === which)!;
  const dense: ShownMark[] = seed === null ? [] : denseMarks(stored, chanceOf(seed));
  const desk = new Set(seatsFor(2));
  const marks = dense.flatMap(({ note, value, seats }) => {
    const here = seats === 'all' ? seats : seats.filter((seat) => desk.has(seat));
    return here.length ? [{ note, value, seats: here }] : [];
  });
  const heading = { title: read.score.title || 'Untitled', composer: read.score.composer, instrument: stored.name, seat: 'Desk 1', edition: 'Edition 1, printed 26 November 2026' };
  return { bytes, fileName: path, part: stored.id, stored, marks, heading, ...LOOK, ...more };
}

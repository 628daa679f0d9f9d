import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { describe, expect, it } from 'vitest';
import yazl from 'yazl';
import { countArrived } from '../../../../client/views/folder/prints/arrived.ts';
import { readersFor } from '../../../../client/views/folder/prints/copies.ts';

async function zipOf(files: readonly Buffer[]): Promise<Buffer> {
  const zip = new yazl.ZipFile();
  for (const [i, bytes] of files.entries()) zip.addBuffer(bytes, `${'x'.repeat(i)}ü ${i}.pdf`, { compress: i % 2 === 0 });
  zip.end();
  const chunks: Buffer[] = [];
  zip.outputStream.on('data', (chunk: Buffer) => chunks.push(chunk));
  await once(zip.outputStream, 'end');
  return Buffer.concat(chunks);
}

describe('copies of parts', () => {
  it('are for everybody, each desk, each player, or the one named', () => {
    const seats = ['1o', '1i', '2o'];
    expect(readersFor('section', seats)).toEqual(['section']);
    expect(readersFor('desks', seats)).toEqual(['1', '2']);
    expect(readersFor('seats', seats)).toEqual(['1o', '1i', '2o']);
    expect(readersFor('2o', seats)).toEqual(['2o']);
  });

  it('are counted as they come, wherever the line cuts them', async () => {
    const signature = Buffer.from('PK\x03\x04'.repeat(20), 'latin1');
    const zip = await zipOf([randomBytes(3000), signature, Buffer.alloc(0), randomBytes(70_000), signature]);
    for (const size of [1, 7, 30, 1000, zip.length]) {
      const arrived = countArrived();
      const counts: number[] = [];
      for (let at = 0; at < zip.length; at += size) counts.push(arrived(zip.subarray(at, at + size)));
      expect(counts.at(-1)).toBe(5);
      expect([...counts].sort((a, b) => a - b)).toEqual(counts);
    }
  });
});

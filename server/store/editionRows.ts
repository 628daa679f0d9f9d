import { createHash, randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { Part } from '../../core/music/part.ts';
import type { NewEdition, NewFile, NewPart } from './library.ts';

/** Adds the document as it came; returns its id. */
export async function insertEdition(client: pg.PoolClient, work: string, { bytes, fileName, by, at }: NewEdition): Promise<string> {
  const id = randomUUID();
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const sql = 'insert into edition (id, work_id, bytes, sha256, file_name, imported_by, imported_at) values ($1, $2, $3, $4, $5, $6, $7)';
  await client.query(sql, [id, work, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), sha256, fileName, by, at]);
  return id;
}

export async function insertParts(client: pg.PoolClient, work: string, edition: string, parts: NewPart[], from: number): Promise<void> {
  const sql = `insert into part (id, work_id, edition_id, section_id, xml_part_id, name, instrument, position, content, measures)
    values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)`;
  for (const [index, { content, section }] of parts.entries()) {
    const values = [randomUUID(), work, edition, section, content.id, content.name, content.instrument, from + index, JSON.stringify(content), content.measures.length];
    await client.query(sql, values);
  }
}

/** The place behind the last part of a work. */
export async function nextPosition(client: pg.PoolClient, work: string): Promise<number> {
  const { rows } = await client.query<{ next: number }>('select coalesce(max(position) + 1, 0)::int as next from part where work_id = $1', [work]);
  return rows[0]!.next;
}

/** Adds documents with their parts, in this order from a place among the parts of the work. */
export async function insertFiles(client: pg.PoolClient, work: string, files: readonly NewFile[], from: number): Promise<void> {
  let next = from;
  for (const { edition, parts } of files) {
    await insertParts(client, work, await insertEdition(client, work, edition), parts, next);
    next += parts.length;
  }
}

/** New music for a part that is there; its log stays. */
export async function renewPart(client: pg.PoolClient, id: string, edition: string, content: Part): Promise<void> {
  const sql = 'update part set edition_id = $2, xml_part_id = $3, name = $4, content = $5, measures = $6, revision = revision + 1 where id = $1';
  await client.query(sql, [id, edition, content.id, content.name, JSON.stringify(content), content.measures.length]);
}

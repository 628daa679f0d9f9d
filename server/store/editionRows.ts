import { createHash, randomUUID } from 'node:crypto';
import type pg from 'pg';
import { laidOverRow } from './laidOver.ts';
import type { NewEdition, NewFile, NewPart, RenewedPart } from './library.ts';

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

/** New music for a part that is there. Its log stays, and what it had is kept; where measures moved, the log says so in one row more. */
export async function renewPart(client: pg.PoolClient, { id, content, measures }: RenewedPart, edition: string, { by, at }: NewEdition): Promise<void> {
  await client.query('insert into earlier_music (part_id, revision, edition_id, content) select id, revision, edition_id, content from part where id = $1 for update', [id]);
  const sql = 'update part set edition_id = $2, xml_part_id = $3, name = $4, content = $5, measures = $6, revision = revision + 1, head = head + $7 where id = $1 returning head';
  const { rows } = await client.query<{ head: number }>(sql, [id, edition, content.id, content.name, JSON.stringify(content), content.measures.length, measures ? 1 : 0]);
  if (!measures) return;
  const row = laidOverRow(rows[0]!.head, edition, measures, { by, at }, '');
  const logged = `insert into operation (part_id, seq, operation, name, input, events, person_id, by_name, at)
    select $1, $2, $3, $4, $5, $6, id, name, $8 from person where id = $7`;
  await client.query(logged, [id, row.seq, row.operation, row.name, JSON.stringify(row.input), JSON.stringify(row.events), by, at]);
}

import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import { inPieces } from './inPieces.ts';
import type { Jobs, Made } from './jobs.ts';
import { transaction } from './transaction.ts';

type JobFiles = Pick<Jobs, 'keepUpload' | 'dropUploads' | 'bytes' | 'keepMade' | 'made'>;

const PIECE = 'insert into job_piece (file_id, place, bytes) values ($1, $2, $3)';

/** Files of jobs as rows of about a megabyte, so that any process reaches them and none holds more than a piece. */
export function createJobFiles(pool: pg.Pool, tellOf: (job: string) => void): JobFiles {
  const drop = async (ids: string[]): Promise<void> => void (await pool.query('delete from job_file where id = any($1)', [ids]));

  return {
    async keepUpload(fileName, bytes) {
      const id = randomUUID();
      await pool.query('insert into job_file (id, made, place, name) values ($1, false, 0, $2)', [id, fileName]);
      try {
        let place = 0;
        for await (const piece of inPieces(bytes)) await pool.query(PIECE, [id, place++, piece]);
      } catch (reason) {
        await drop([id]).catch(() => {});
        throw reason;
      }
      return { id, fileName };
    },

    dropUploads: (uploads) => drop(uploads.map(({ id }) => id)),

    async *bytes(file) {
      for (let place = 0; ; place++) {
        const { rows } = await pool.query<{ bytes: Buffer }>('select bytes from job_piece where file_id = $1 and place = $2', [file, place]);
        if (!rows[0]) return;
        yield rows[0].bytes;
      }
    },

    async keepMade(id, turn, place, files, notes) {
      const kept = await transaction(pool, async (client) => {
        // Held, so that no other turn begins while this one writes.
        const { rowCount } = await client.query("select from job where id = $1 and turn = $2 and state = 'running' for update", [id, turn]);
        if (!rowCount) return false;
        await client.query('delete from job_file where job_id = $1 and made and place = $2', [id, place]);
        for (const [page, { bytes, mediaType }] of (files.length ? files : [NOTHING]).entries()) {
          const file = randomUUID();
          const values = [file, id, place, page, mediaType, bytes.length, page === 0 ? JSON.stringify(notes) : null];
          await client.query('insert into job_file (id, job_id, made, place, page, name, size, notes) values ($1, $2, true, $3, $4, $5, $6, $7)', values);
          let piece = 0;
          for await (const part of inPieces([bytes])) await client.query(PIECE, [file, piece++, part]);
        }
        return true;
      });
      if (kept) tellOf(id);
      return kept;
    },

    async made(id, place): Promise<Made | null> {
      const sql = 'select id, name as "mediaType", size, notes from job_file where job_id = $1 and made and place = $2 order by page';
      const { rows } = await pool.query<Made['files'][number] & Pick<Made, 'notes'>>(sql, [id, place]);
      if (!rows[0]) return null;
      return { notes: rows[0].notes, files: rows.filter(({ mediaType }) => mediaType).map(({ id: file, mediaType, size }) => ({ id: file, mediaType, size })) };
    },
  };
}

/** Stands where something made has no file, only what is to be told of it. */
const NOTHING = { bytes: new Uint8Array(), mediaType: '' };

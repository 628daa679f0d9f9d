import { APP, DOOR } from './connection.ts';

interface Grant {
  table: string;
  role: string;
  may: string;
}

const ALL = 'select, insert, update, delete';
/** Rows are added, never changed, never removed. */
const ADD = 'select, insert';

const granted = (role: string, may: string, tables: readonly string[]): Grant[] => tables.map((table) => ({ table, role, may }));

/** What each of the server's two roles may do in which table. What is not here they may not; which rows they see is row-level security's business. */
export const GRANTS: readonly Grant[] = [
  ...granted(APP, ALL, ['attention', 'belonging', 'departure', 'earlier_music', 'erratum', 'job', 'job_file', 'job_piece', 'letters', 'membership', 'part', 'programme', 'programme_member', 'programme_seating', 'section', 'snapshot', 'work']),
  ...granted(APP, ADD, ['edition', 'kept_part', 'kept_set', 'operation', 'person', 'refused_operation', 'trail']),
  ...granted(APP, 'select', ['ensemble']),
  // Whether an asker is still signed in is looked up with each batch; what proves it stays at the door.
  ...granted(APP, 'select (id, person_id, expires_at, revoked_at)', ['session']),
  ...granted(DOOR, ALL, ['address', 'address_claim', 'attempt', 'belonging', 'hand', 'identity', 'identity_errand', 'password', 'person', 'session', 'sign_in_link']),
  ...granted(DOOR, 'select, insert, update', ['ensemble']),
  // A server says that it is not ready while the database lacks a change that it counts on.
  ...granted(DOOR, 'select (migration_name, finished_at, rolled_back_at)', ['_prisma_migrations']),
  // Somebody who had left is no longer gone once they take up an invitation.
  ...granted(DOOR, 'select, delete', ['departure']),
  // What happens at the door is told; reading it is each ensemble's own business.
  ...granted(DOOR, 'insert', ['trail']),
];

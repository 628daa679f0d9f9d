/** Where a database is and as whom to enter; passed to `pg` and Prisma as it is. */
export type Connection = { connectionString: string; options?: string } | { host: string; port: number; user: string; database: string };

export const DATABASE = 'bowline';
/** Only the supervisor enters as this one: a superuser passes every check. */
export const BOOTSTRAP = 'bowline_bootstrap';
/** Owns the tables: migrations. */
export const OWNER = 'bowline_owner';
/** As whom the server reaches what an ensemble keeps: one ensemble at a time; it may add to the log, never change or remove a row of it. */
export const APP = 'bowline_app';
/** As whom it looks who there is and how they come in: it reaches no music. */
export const DOOR = 'bowline_door';

/** Enters as whoever the address names and acts as another from the first statement on. */
export const acting = (connectionString: string, role: string): Connection => ({ connectionString, options: `-c role=${role}` });

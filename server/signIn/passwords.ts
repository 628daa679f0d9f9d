import { randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';
import { createTurns } from './turns.ts';

/** argon2id (the package's own choice of the three) with the least that OWASP's password storage sheet asks for. */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Each works in its own 19 MiB on a thread of the pool that files are read with too. Chosen, not measured. */
const AT_ONCE = 2;
const LONGEST_LINE = 40;

const turns = createTurns(AT_ONCE, LONGEST_LINE);
/** What a password is laid beside where there is none, so that both take the same time. */
let decoy: Promise<string> | undefined;

/** A password as it is kept. Null: too many are being worked on now. */
export const keptForm = (password: string): Promise<string | null> => turns(() => hash(password, COST));

/** Whether it is the password that was kept; where none was, it takes as long and is false. Null: too many are being worked on now. */
export async function isPassword(password: string, kept: string | null): Promise<boolean | null> {
  decoy ??= hash(randomBytes(32), COST);
  const beside = kept ?? (await decoy);
  const same = await turns(() => verify(beside, password));
  return same === null ? null : same && kept !== null;
}

import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from '../../core/agreement/wire/signIn.ts';

export type Weakness = 'PASSWORD_SHORT' | 'PASSWORD_LONG' | 'PASSWORD_COMMON' | 'PASSWORD_NAMES';

/** Some forty-nine thousand of the most used; fetched with the first question. */
let common: Promise<ReadonlySet<string>> | undefined;
const commonOnes = (): Promise<ReadonlySet<string>> => (common ??= import('@zxcvbn-ts/language-common').then(({ dictionary }) => new Set(dictionary['passwords-common'])));

/** A name that is shorter says nothing about who somebody is. */
const SHORTEST_NAME = 4;

/** Words that are guessed first: ours, and every word of the names given. Example: `guessedFirst(['Ida Lund'])` is ["bowline", "lund", "idalund"]. */
export function guessedFirst(names: readonly string[]): string[] {
  const words = names.flatMap((name) => [...plain(name).split(' '), plain(name).replaceAll(' ', '')]);
  return ['bowline', ...new Set(words.filter((word) => word.length >= SHORTEST_NAME))];
}

/** Small letters and figures without their accents, words parted by one space. */
const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/** A few signs over and over. */
const repeats = (text: string): boolean => /^(.{1,4}?)\1+.{0,3}$/su.test(text);

/** A common one, or two of them put together, with up to six figures and signs before and after. */
function isCommon(password: string, known: ReadonlySet<string>): boolean {
  const small = password.toLowerCase();
  const bare = small.replace(/^[^\p{L}]{1,6}|[^\p{L}]{1,6}$/gu, '');
  return [small, bare].some((text) => known.has(text) || repeats(text) || [...text].some((_, i) => i > 0 && known.has(text.slice(0, i)) && known.has(text.slice(i))));
}

/** Why this may not be a new password, or null. `names`: of the person, their address and their ensembles. There are no rules about kinds of signs. */
export async function weaknessOf(password: string, names: readonly string[]): Promise<Weakness | null> {
  const length = [...password].length;
  if (length < SHORTEST_PASSWORD) return 'PASSWORD_SHORT';
  if (length > LONGEST_PASSWORD) return 'PASSWORD_LONG';
  const said = plain(password).replaceAll(' ', '');
  if (guessedFirst(names).some((word) => said.includes(word))) return 'PASSWORD_NAMES';
  return isCommon(password, await commonOnes()) ? 'PASSWORD_COMMON' : null;
}

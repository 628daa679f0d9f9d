const NUMBERS = ['nessun', 'un', 'due', 'tre', 'quattro', 'cinque', 'sei', 'sette', 'otto', 'nove', 'dieci', 'undici', 'dodici'];

/** A number with its noun, in words to twelve; a feminine noun takes `article` "una". Example: `count(2, 'cambio', 'cambi')` is "due cambi". */
export function count(n: number, one: string, many: string, article = 'un'): string {
  if (n === 0) return `${article === 'una' ? 'nessuna' : 'nessun'} ${one}`;
  return n === 1 ? `${article} ${one}` : `${NUMBERS[n] ?? n} ${many}`;
}

/** Example: `ordinal(3)` is "3ª": a note is feminine. */
export const ordinal = (n: number): string => `${n}ª`;

/** A decimal point becomes a comma. Example: `comma('0.25')` is "0,25". */
export const comma = (figure: string): string => figure.replace('.', ',');

/** The day as a section reads it, "12 gennaio"; the year only when it is another one. */
export function day(iso: string, now = new Date()): string {
  const date = new Date(iso);
  const year = date.getFullYear() === now.getFullYear() ? {} : { year: 'numeric' as const };
  return date.toLocaleDateString('it-IT', { day: 'numeric', month: 'long', ...year });
}

/** Measures by their printed numbers, "battuta 3" or "battute 3, 5". */
export const measures = (numbers: string): string => (/, | a /.test(numbers) ? `battute ${numbers}` : `battuta ${numbers}`);

/** Names in a row, "uno, due e tre". */
export const listed = (names: readonly string[]): string => (names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} e ${names.at(-1)}`);

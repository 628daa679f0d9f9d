const NUMBERS = ['keine', 'ein', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn', 'elf', 'zwölf'];

/** A number with its noun as a sentence's subject, in words to twelve; a feminine noun takes `one` "eine". Example: `count(1, 'Zettel')` is "ein Zettel". */
export const count = (n: number, one: string, many = one, article = 'ein'): string => (n === 1 ? `${article} ${one}` : `${NUMBERS[n] ?? n} ${many}`);

/** Example: `ordinal(3)` is "3.". */
export const ordinal = (n: number): string => `${n}.`;

/** A decimal point becomes a comma. Example: `comma('0.25')` is "0,25". */
export const comma = (figure: string): string => figure.replace('.', ',');

/** The day as a section reads it, "12. Januar"; the year only when it is another one. */
export function day(iso: string, now = new Date()): string {
  const date = new Date(iso);
  const year = date.getFullYear() === now.getFullYear() ? {} : { year: 'numeric' as const };
  return date.toLocaleDateString('de-DE', { day: 'numeric', month: 'long', ...year });
}

/** Measures by their printed numbers: German says Takt of one and of several. */
export const measures = (numbers: string): string => `Takt ${numbers}`;

/** Names in a row, "eins, zwei und drei". */
export const listed = (names: readonly string[]): string => (names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`);

const NUMBERS = ['aucun', 'un', 'deux', 'trois', 'quatre', 'cinq', 'six', 'sept', 'huit', 'neuf', 'dix', 'onze', 'douze'];

/** A number with its noun, in words to twelve; a feminine noun takes `article` "une". Example: `count(1, 'marque', 'marques', 'une')` is "une marque". */
export function count(n: number, one: string, many = `${one}s`, article = 'un'): string {
  if (n === 0) return `${article === 'une' ? 'aucune' : 'aucun'} ${one}`;
  return n === 1 ? `${article} ${one}` : `${NUMBERS[n] ?? n} ${many}`;
}

/** Example: `ordinal(1)` is "1re", `ordinal(3)` "3e": a note is feminine. */
export const ordinal = (n: number): string => (n === 1 ? '1re' : `${n}e`);

/** A decimal point becomes a comma. Example: `comma('0.25')` is "0,25". */
export const comma = (figure: string): string => figure.replace('.', ',');

/** The day as a section reads it, "12 janvier"; the year only when it is another one. */
export function day(iso: string, now = new Date()): string {
  const date = new Date(iso);
  const year = date.getFullYear() === now.getFullYear() ? {} : { year: 'numeric' as const };
  return date.toLocaleDateString('fr-FR', { day: 'numeric', month: 'long', ...year });
}

/** Measures by their printed numbers, "la mesure 3" or "les mesures 3, 5". */
export const measures = (numbers: string): string => (/, | à /.test(numbers) ? `les mesures ${numbers}` : `la mesure ${numbers}`);

/** Names in a row, "un, deux et trois". */
export const listed = (names: readonly string[]): string => (names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} et ${names.at(-1)}`);

const PLACES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh', 'twelfth'];

/** Example: `ordinalWord(2)` is "second", `ordinalWord(21)` "21st". */
export function ordinalWord(n: number): string {
  const ending = n % 100 > 10 && n % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return PLACES[n - 1] ?? `${n}${ending}`;
}

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

/** Example: `count(3, 'slip')` is "Three slips"; `count(1, 'mark')` is "One mark". */
export const count = (n: number, thing: string, plural = `${thing}s`): string => `${NUMBERS[n] ?? n} ${n === 1 ? thing : plural}`;

/** The day as a section reads it, "12 January"; the year only when it is another one. */
export function day(iso: string, now = new Date()): string {
  const date = new Date(iso);
  const year = date.getFullYear() === now.getFullYear() ? {} : { year: 'numeric' as const };
  return date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', ...year });
}

/** Measures by their printed numbers, "3", "3, 5" or "3 to 5". */
export const measures = (numbers: string): string => `${/, | to /.test(numbers) ? 'measures' : 'measure'} ${numbers}`;

/** Names in a row, "one, two and three". */
export const listed = (names: readonly string[]): string => (names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`);

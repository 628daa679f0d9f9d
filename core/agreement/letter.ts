/** The nth slip letter of a measure, from 0: a to z, then aa, ab ... Example: `letterOf(26)` is "aa". */
export function letterOf(n: number): string {
  const last = String.fromCharCode(97 + (n % 26));
  return n < 26 ? last : letterOf(Math.floor(n / 26) - 1) + last;
}

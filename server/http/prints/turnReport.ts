import type { Printed } from '../../print/order.ts';

/** What the librarian must know of one copy: every page that cannot be turned in peace, and what the printer warns of. Empty where all is well. */
export function turnReport(name: string, { turns, warnings }: Pick<Printed, 'turns' | 'warnings'>): string[] {
  const hard = turns.filter(({ kind }) => kind !== 'good');
  if (!hard.length && !warnings.length) return [];
  return [
    name,
    ...hard.map(({ page, measure, seconds, kind }) => `  page ${page}, after measure ${measure}: ${kind === 'none' ? 'no rest to turn in' : `${seconds.toFixed(1)} s, V.S.`}`),
    ...warnings.map((warning) => `  ${warning}`),
  ];
}

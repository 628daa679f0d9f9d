import type { Cast, Happened, Of } from '../record/happened.ts';

/** A recorded history, sorted by what is asked of it. */
export interface Told {
  cast: Cast;
  of<Kind extends Happened['k']>(kind: Kind): Of<Kind>[];
  logs: Map<string, Of<'log'>['rows']>;
  /** Every row by its operation id. */
  rowOf: Map<string, { part: string; seq: number }>;
  ensembleOf: { person: Map<string, string>; part: Map<string, string> };
}

export function tell(history: readonly Happened[]): Told {
  const kinds = new Map<Happened['k'], Happened[]>();
  for (const one of history) {
    const list = kinds.get(one.k);
    if (list) list.push(one);
    else kinds.set(one.k, [one]);
  }
  const of = <Kind extends Happened['k']>(kind: Kind) => (kinds.get(kind) ?? []) as Of<Kind>[];
  const cast = of('cast')[0];
  if (!cast) throw new Error('A record begins with who takes part.');
  const logs = new Map(of('log').map(({ part, rows }) => [part, rows]));
  const rowOf = new Map([...logs].flatMap(([part, rows]) => rows.map(({ operation, seq }) => [operation, { part, seq }] as const)));
  const byId = (list: { id: string; ensemble: string }[]) => new Map(list.map(({ id, ensemble }) => [id, ensemble]));
  return { cast, of, logs, rowOf, ensembleOf: { person: byId(cast.people), part: byId(cast.parts) } };
}

/** A guarantee that did not hold: which, what was seen, and the lines of the record that show it. */
export interface Violation {
  guarantee: number;
  what: string;
  shown: unknown[];
}

export interface Guarantee {
  id: number;
  says: string;
  /** Every place where it did not hold. Pure. */
  broken(told: Told): Omit<Violation, 'guarantee'>[];
}

import { compareTimes, type ExactTime } from '../music/time.ts';
import type { Change, Said } from './directions.ts';
import type { Tempo } from './tempo.ts';

interface Now {
  dynamic: string | null;
  tempo: number | null;
  pizzicato: boolean;
}

interface Placed {
  onset: ExactTime;
  staff?: number;
}

/**
 * What is in force at each note: dynamics and pizzicato of its own part, tempo and rehearsal marks of the whole score, because an orchestral score
 * writes those once, above its first part. Measures must be asked for in order, part after part.
 */
export class InForce {
  private readonly parts: readonly (readonly (Said | undefined)[])[];
  private readonly tempos: Change<Tempo>[][];
  private readonly startTempo: (number | null)[];
  private part = -1;
  private dynamics = new Map<number, string>();
  private plucked = new Map<number, boolean>();

  constructor(parts: readonly (readonly (Said | undefined)[])[]) {
    this.parts = parts;
    const count = Math.max(0, ...parts.map((measures) => measures.length));
    this.tempos = Array.from({ length: count }, (_, i) => inOrder(parts.flatMap((measures) => measures[i]?.tempos ?? [])));
    this.startTempo = [];
    let tempo: number | null = null;
    for (const changes of this.tempos) {
      this.startTempo.push(tempo);
      tempo = tempoAfter(changes, tempo, undefined);
    }
  }

  rehearsal(part: number, measure: number): string | undefined {
    return this.parts[part]?.[measure]?.rehearsal ?? this.parts.find((measures) => measures[measure]?.rehearsal)?.[measure]?.rehearsal;
  }

  /** A function from a note of this measure to what is in force there. */
  measure(part: number, measure: number): (note: Placed) => Now {
    if (part !== this.part) {
      this.part = part;
      this.dynamics = new Map();
      this.plucked = new Map();
    }
    const said = this.parts[part]?.[measure];
    const dynamics = timeline(inOrder(said?.dynamics ?? []), this.dynamics);
    const plucked = timeline(inOrder(said?.pizzicato ?? []), this.plucked);
    const tempos = this.tempos[measure] ?? [];
    const before = this.startTempo[measure] ?? null;
    return (note) => ({
      dynamic: dynamics(note) ?? null,
      tempo: tempos.length ? tempoAfter(tempos, before, note.onset) : before,
      pizzicato: plucked(note) ?? false,
    });
  }
}

function inOrder<T>(changes: Change<T>[]): Change<T>[] {
  return changes.length > 1 ? changes.toSorted((a, b) => compareTimes(a.at, b.at)) : changes;
}

/** Staff 0 stands for all staves: a change without a staff clears what single staves had. */
function timeline<T>(changes: readonly Change<T>[], standing: Map<number, T>): (note: Placed) => T | undefined {
  const before = new Map(standing);
  for (const change of changes) apply(change, standing);
  if (!changes.length) return (note) => at(before, note);
  return (note) => {
    const here = new Map(before);
    for (const change of changes) if (compareTimes(change.at, note.onset) <= 0) apply(change, here);
    return at(here, note);
  };
}

function apply<T>(change: Change<T>, standing: Map<number, T>): void {
  if (change.staff === undefined) standing.clear();
  standing.set(change.staff ?? 0, change.value);
}

function at<T>(standing: Map<number, T>, note: Placed): T | undefined {
  return standing.get(note.staff ?? 1) ?? standing.get(0);
}

/** `until` undefined: after all of the changes. */
function tempoAfter(changes: readonly Change<Tempo>[], before: number | null, until: ExactTime | undefined): number | null {
  let tempo = before;
  for (const { at: time, value } of changes) {
    if (until !== undefined && compareTimes(time, until) > 0) break;
    if ('quarters' in value) tempo = value.quarters;
    else if (tempo !== null) tempo *= value.factor;
  }
  return tempo;
}

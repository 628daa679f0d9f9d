import type { Part } from '../music/part.ts';
import { Automaton } from './automaton.ts';
import { type LineEvent, linesOf } from './line.ts';
import { isWithin, KEY, type Least, type Likeness, type LinePlace, type Run, runOf } from './run.ts';

/** Changes of value or slur a rhythm needs before it is more than a row of like notes. Chosen, not measured. */
const RHYTHM_TURNS = 4;

interface Row {
  symbols: number[];
  /** Where each symbol stands; null for a rest or the end of a line. */
  places: (LinePlace | null)[];
}

class Symbols {
  readonly #numbers = new Map<string, number>();

  of(text: string): number {
    return this.#numbers.get(text) ?? this.#numbers.set(text, this.#numbers.size).get(text)!;
  }
}

/** Lines of a part behind one another: a symbol an event, one for each silence between events, and one that comes nowhere else after each line. */
function rowOf(part: Part, keyOf: (event: LineEvent) => string, symbols: Symbols, name: string): Row {
  const row: Row = { symbols: [], places: [] };
  const add = (symbol: string, place: LinePlace | null) => {
    row.symbols.push(symbols.of(symbol));
    row.places.push(place);
  };
  const lines = linesOf(part);
  lines.forEach((line, at) => {
    line.forEach((event, first) => {
      if (first > 0 && event.gap > 0) add(`rest ${event.gap}`, null);
      add(keyOf(event), { lines, line: at, first });
    });
    add(`end ${name} ${at}`, null);
  });
  return row;
}

function runsOf(likeness: Likeness, a: Part, b: Part, least: number): Run[] {
  const symbols = new Symbols();
  const rowB = rowOf(b, KEY[likeness], symbols, 'b');
  const rowA = a === b ? rowB : rowOf(a, KEY[likeness], symbols, 'a');
  const automaton = new Automaton();
  if (a !== b) for (const symbol of rowA.symbols) automaton.add(symbol);
  const runs: Run[] = [];
  for (let at = 0; at < rowB.symbols.length; ) {
    const { first, length } = rowB.places[at] ? automaton.longest(rowB.symbols, at) : { first: 0, length: 0 };
    const events = rowB.places.slice(at, at + length).filter((place) => place !== null).length;
    const next = events >= least ? at + length : at + 1;
    if (events >= least) runs.push(runOf(likeness, rowA.places[first]!, rowB.places[at]!, events));
    for (; at < next; at += 1) if (a === b) automaton.add(rowB.symbols[at]!);
  }
  return runs;
}

function turns(part: Part, { b, notes }: Run): number {
  const stretch = linesOf(part)[b.line]!.slice(b.first, b.first + notes.length);
  return stretch.filter((event, i) => i > 0 && KEY.rhythm(event) !== KEY.rhythm(stretch[i - 1]!)).length;
}

/**
 * Where the music of `b` stands in `a`, at any time: from its beginning on, each stretch of `b` as long as it goes and at least `least` notes, with the
 * first place in `a` that has it; runs do not overlap in `b`. With `a` and `b` the same part: music that came before, clear of its model. Silences
 * count; the beat it begins on does not. A rhythm must turn now and then (a row of like notes is none), and one wholly inside a unison is not told again.
 * Exact; time grows with the notes. Example: A B C A B C against itself with 3 gives one run of 3.
 */
export function playedAnywhere(a: Part, b: Part, least: Least): Run[] {
  const unisons = runsOf('unison', a, b, least.unison);
  const rhythms = runsOf('rhythm', a, b, least.rhythm).filter((run) => turns(b, run) >= RHYTHM_TURNS);
  return [...unisons, ...rhythms.filter((run) => !unisons.some((unison) => isWithin(run, unison)))];
}

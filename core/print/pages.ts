import { emptyCost, lineCost, PAGE, TITLE_PAGE, turnCost } from './costs.ts';
import type { TurnRest } from './turns.ts';

/** Music that stays together on a line: a measure, or several counted by one rest. Staff spaces. */
export interface Block {
  first: number;
  last: number;
  /** As wide as its notes want. */
  width: number;
  /** Clef and key, where a line begins with it. */
  lead: number;
  /** What stands above the first and below the last staff line. */
  up: number;
  down: number;
  /** From the first staff line to the last. */
  staff: number;
  /** Silence around the barline after it. */
  rest: TurnRest;
}

export interface Sheet {
  /** Length of a line and heights for music on the first and on every other page, in staff spaces. */
  line: number;
  firstHeight: number;
  height: number;
  /** Least room between what stands below one line and above the next. */
  gap: number;
  /** Least distance from the last staff line of a line to the first of the next. */
  apart: number;
}

/** Blocks of a line, by their places in the list: `from` to before `to`. */
export interface Line {
  from: number;
  to: number;
}

interface Pages {
  pages: readonly (readonly Line[])[];
  cost: number;
}

export interface LaidOnPages extends Pages {
  /** Number of the page the music begins on: 2 where a page with the title alone goes before it. */
  begins: 1 | 2;
}

/** Height of lines on a page from the top of the first to the foot of the last. Example: no line has height 0. */
export function heightOf(blocks: readonly Block[], lines: readonly Line[], { gap, apart }: Sheet): number {
  const extents = lines.map(({ from, to }) => extentOf(blocks, from, to));
  return extents.reduce((sum, { up, down, staff }, i) => {
    const above = extents[i - 1];
    return sum + staff + (above ? Math.max(apart, above.down + gap + up) - above.down : up) + down;
  }, 0);
}

interface Extent {
  up: number;
  down: number;
  staff: number;
}

function extentOf(blocks: readonly Block[], from: number, to: number): Extent {
  const extent = { up: 0, down: 0, staff: 4 };
  for (let i = from; i < to; i += 1) {
    const { up, down, staff } = blocks[i]!;
    extent.up = Math.max(extent.up, up);
    extent.down = Math.max(extent.down, down);
    extent.staff = Math.max(extent.staff, staff);
  }
  return extent;
}

/** Lines that may begin with block `from`, with their costs. */
function linesFrom(blocks: readonly Block[], from: number, line: number): { to: number; cost: number }[] {
  const found: { to: number; cost: number }[] = [];
  let width = blocks[from]!.lead;
  for (let to = from + 1; to <= blocks.length; to += 1) {
    width += blocks[to - 1]!.width;
    const next = blocks[to];
    const cost = lineCost(width, line, { longer: next ? width + next.width : Infinity, ends: !next, single: to === from + 1 });
    if (Number.isFinite(cost)) found.push({ to, cost });
    if (width > 1.3 * line) break;
  }
  return found;
}

interface Reached {
  cost: number;
  /** Height to the foot of the last staff, and what hangs below it. */
  height: number;
  down: number;
  lines: readonly Line[];
}

/** The cheapest ways to fill a page that begins with block `from`, by the block the next page begins with. */
function pagesFrom(blocks: readonly Block[], from: number, sheet: Sheet, height: number, lines: readonly (readonly { to: number; cost: number }[])[]): Map<number, { cost: number; lines: readonly Line[] }> {
  const waiting = new Map<number, Reached[]>([[from, [{ cost: 0, height: 0, down: 0, lines: [] }]]]);
  const ends = new Map<number, { cost: number; lines: readonly Line[] }>();
  for (let at = from; at < blocks.length; at += 1) {
    for (const state of waiting.get(at) ?? []) {
      for (const { to, cost } of lines[at]!) {
        const { up, down, staff } = extentOf(blocks, at, to);
        const foot = state.height + staff + (state.lines.length ? Math.max(sheet.apart, state.down + sheet.gap + up) : up);
        if (state.lines.length && foot + down > height) continue;
        const reached = { cost: state.cost + cost, height: foot, down, lines: [...state.lines, { from: at, to }] };
        const whole = reached.cost + emptyCost(foot + down, height, to === blocks.length);
        if (whole < (ends.get(to)?.cost ?? Infinity)) ends.set(to, { cost: whole, lines: reached.lines });
        keep(waiting, to, reached);
      }
    }
  }
  return ends;
}

/** Keeps a state unless another is no worse in every way: a cheaper one that is also no fuller may still leave the page emptier, so fullness is compared as equal only. */
function keep(waiting: Map<number, Reached[]>, at: number, reached: Reached): void {
  const others = waiting.get(at) ?? [];
  const same = others.findIndex(({ height, down }) => Math.abs(height - reached.height) < 1e-6 && Math.abs(down - reached.down) < 1e-6);
  if (same < 0) waiting.set(at, [...others, reached]);
  else if (reached.cost < others[same]!.cost) others[same] = reached;
}

/**
 * Lays blocks in lines and lines on pages at the least cost over all ways of doing it: lines near their own width, pages full, and turns, which
 * come after odd pages, in silences. The first page is a right one, or a page with the title goes before it, so that what cannot be turned lies open
 * side by side. Costs are those of `costs.ts`.
 * Invariant: every block stands on exactly one line, in order. Example: no blocks lie on no pages.
 */
export function layOnPages(blocks: readonly Block[], sheet: Sheet): LaidOnPages {
  const lines = blocks.map((_, from) => linesFrom(blocks, from, sheet.line));
  const filled = new Map<string, ReturnType<typeof pagesFrom>>();
  const known = new Map<string, Pages>();
  const from = (block: number, right: boolean): Pages => {
    if (block === blocks.length) return { pages: [], cost: 0 };
    const key = `${block} ${right ? 'right' : 'left'}`;
    const before = known.get(key);
    if (before) return before;
    const height = block === 0 ? sheet.firstHeight : sheet.height;
    const ends = filled.get(`${block}`) ?? pagesFrom(blocks, block, sheet, height, lines);
    filled.set(`${block}`, ends);
    let best: Pages = { pages: [], cost: Infinity };
    for (const [to, page] of ends) {
      const turn = to < blocks.length ? PAGE + (right ? turnCost(blocks[to - 1]!.rest) : 0) : 0;
      const rest = from(to, !right);
      const cost = page.cost + turn + rest.cost;
      if (cost < best.cost) best = { pages: [page.lines, ...rest.pages], cost };
    }
    known.set(key, best);
    return best;
  };
  const right = from(0, true);
  const left = from(0, false);
  return left.cost + TITLE_PAGE < right.cost ? { pages: left.pages, cost: left.cost + TITLE_PAGE, begins: 2 } : { ...right, begins: 1 };
}

/** A column of a linear programme: its cost and where it stands in the rows. */
export interface Column {
  cost: number;
  rows: Int32Array;
  values: Float64Array;
}

/** A linear programme over columns that may grow: least cost with every row's sum equal to its right side, nothing below 0. */
export interface Programme {
  columns: Column[];
  /** Points of each column here; they may differ from the column's own. */
  cost: number[];
  /** Column of each basis row. */
  basis: Int32Array;
  inverse: Float64Array[];
  level: Float64Array;
  /** What one more of a row's right side would cost. */
  duals: Float64Array;
}

const ZERO = 1e-9;

/** A programme whose first columns, one a row and each 1 in its own row, are its basis. Right sides are 0 or more. */
export function programmeOf(columns: readonly Column[], right: readonly number[]): Programme {
  const rows = right.length;
  return {
    columns: [...columns],
    cost: columns.map(({ cost }) => cost),
    basis: Int32Array.from({ length: rows }, (_, r) => r),
    inverse: Array.from({ length: rows }, (_, r) => {
      const row = new Float64Array(rows);
      row[r] = 1;
      return row;
    }),
    level: Float64Array.from(right),
    duals: Float64Array.from({ length: rows }, (_, r) => columns[r]!.cost),
  };
}

/**
 * A programme that stands at a known plan: `taken[g]` is the column that alone fills row g; every later row has a column for what is left of it and one for
 * what is beyond it, `spare[k]`.
 */
export function programmeAt(columns: readonly Column[], right: readonly number[], taken: readonly number[], spare: readonly (readonly [left: number, beyond: number])[]): Programme {
  const programme = programmeOf(columns, right);
  const { basis, inverse, level } = programme;
  taken.forEach((column, g) => {
    basis[g] = column;
    const { rows, values } = columns[column]!;
    rows.forEach((r, k) => {
      if (r === g) return;
      inverse[r]![g] = -values[k]!;
      level[r]! -= values[k]!;
    });
  });
  spare.forEach(([left, beyond], k) => {
    const r = taken.length + k;
    const isBeyond = level[r]! < 0;
    basis[r] = isBeyond ? beyond : left;
    if (!isBeyond) return;
    level[r] = -level[r]!;
    inverse[r] = inverse[r]!.map((value) => -value);
  });
  reprice(programme);
  return programme;
}

/** A copy to go on with on its own; the columns stay shared, later ones too. */
export function copyOf({ columns, cost, basis, inverse, level, duals }: Programme): Programme {
  return { columns, cost: [...cost], basis: basis.slice(), inverse: inverse.map((row) => row.slice()), level: level.slice(), duals: duals.slice() };
}

/** What the present plan costs. */
export function valueOf({ cost, basis, level }: Programme): number {
  return basis.reduce((sum, column, r) => sum + cost[column]! * level[r]!, 0);
}

/** Works the duals out anew after costs have changed. */
export function reprice({ cost, basis, inverse, duals }: Programme): void {
  duals.fill(0);
  inverse.forEach((row, r) => {
    const points = cost[basis[r]!]!;
    if (points !== 0) for (let c = 0; c < row.length; c++) duals[c]! += points * row[c]!;
  });
}

/** Takes a column once and for all: the right sides shrink by it. Levels may fall below 0 until `restore`. */
export function fix({ columns, inverse, level }: Programme, column: number): void {
  const { rows, values } = columns[column]!;
  inverse.forEach((row, r) => rows.forEach((c, k) => {
    level[r]! -= row[c]! * values[k]!;
  }));
}

/** Adds a column. Returns its index. */
export function addColumn({ columns, cost }: Programme, column: Column): number {
  cost.push(column.cost);
  return columns.push(column) - 1;
}

/** Cost of bringing a column in, at the present duals. */
export function reducedCost({ columns, cost, duals }: Programme, column: number): number {
  const { rows, values } = columns[column]!;
  let reduced = cost[column]!;
  for (let k = 0; k < rows.length; k++) reduced -= duals[rows[k]!]! * values[k]!;
  return reduced;
}

function along(row: Float64Array, { rows, values }: Column): number {
  let sum = 0;
  for (let k = 0; k < rows.length; k++) sum += row[rows[k]!]! * values[k]!;
  return sum;
}

function leavingRow(level: Float64Array, direction: Float64Array): number {
  let leaving = -1;
  let least = Infinity;
  for (let r = 0; r < level.length; r++) {
    if (direction[r]! <= 1e-7) continue;
    const ratio = Math.max(0, level[r]!) / direction[r]!;
    if (ratio < least - ZERO || (ratio < least + ZERO && direction[r]! > direction[leaving]!)) {
      least = ratio;
      leaving = r;
    }
  }
  return leaving;
}

function exchange({ basis, inverse, level, duals }: Programme, entering: number, leaving: number, direction: Float64Array, reduced: number): void {
  const out = inverse[leaving]!;
  const factor = 1 / direction[leaving]!;
  const step = level[leaving]! * factor;
  for (let c = 0; c < out.length; c++) {
    out[c]! *= factor;
    duals[c]! += reduced * out[c]!;
  }
  for (let r = 0; r < inverse.length; r++) {
    const by = direction[r]!;
    if (r === leaving || Math.abs(by) < 1e-12) continue;
    const row = inverse[r]!;
    for (let c = 0; c < row.length; c++) row[c]! -= by * out[c]!;
    level[r]! -= by * step;
  }
  level[leaving] = step;
  basis[leaving] = entering;
}

const directionOf = ({ columns, inverse }: Programme, entering: number): Float64Array => Float64Array.from(inverse, (row) => along(row, columns[entering]!));

/**
 * Brings in the column with the lowest reduced cost until none lowers the cost, or after `pivots` of them.
 * @returns how many it brought in. Dense revised simplex (Dantzig's rule). Its result need not be exact: whoever uses the duals proves a bound with them afresh.
 */
export function optimise(programme: Programme, pivots: number): number {
  for (let count = 0; count < pivots; count++) {
    let entering = -1;
    let least = -1e-6;
    for (let c = 0; c < programme.columns.length; c++) {
      const reduced = reducedCost(programme, c);
      if (reduced < least) {
        least = reduced;
        entering = c;
      }
    }
    if (entering < 0) return count;
    const direction = directionOf(programme, entering);
    const leaving = leavingRow(programme.level, direction);
    if (leaving < 0) return count;
    exchange(programme, entering, leaving, direction, least);
    programme.level.forEach((value, r) => (programme.level[r] = Math.max(0, value)));
  }
  return pivots;
}

/**
 * Brings levels below 0 back, keeping the duals as good as they were (dual simplex), for at most `pivots` exchanges.
 * @returns how many it took
 */
export function restore(programme: Programme, pivots: number): number {
  const { level, inverse, columns } = programme;
  for (let count = 0; count < pivots; count++) {
    let leaving = -1;
    for (let r = 0; r < level.length; r++) if (level[r]! < -1e-7 && (leaving < 0 || level[r]! < level[leaving]!)) leaving = r;
    if (leaving < 0) return count;
    const row = inverse[leaving]!;
    let entering = -1;
    let least = Infinity;
    let reduced = 0;
    columns.forEach((column, c) => {
      const by = along(row, column);
      if (by > -1e-7) return;
      const cost = Math.max(0, reducedCost(programme, c));
      if (cost / -by < least) {
        least = cost / -by;
        entering = c;
        reduced = cost;
      }
    });
    if (entering < 0) return count;
    exchange(programme, entering, leaving, directionOf(programme, entering), reduced);
  }
  return pivots;
}

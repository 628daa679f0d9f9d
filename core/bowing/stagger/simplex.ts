/** A column of a linear programme: its cost and where it stands in the rows. */
export interface Column {
  cost: number;
  rows: readonly number[];
  values: readonly number[];
}

/** A linear programme over columns that may grow: least cost with every row's sum equal to its right side, nothing below 0. */
export interface Programme {
  columns: Column[];
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

/** Cost of bringing a column in, at the present duals. */
export function reducedCost(duals: Float64Array, { cost, rows, values }: Column): number {
  let reduced = cost;
  for (let k = 0; k < rows.length; k++) reduced -= duals[rows[k]!]! * values[k]!;
  return reduced;
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

function pivot(programme: Programme, entering: number, reduced: number): boolean {
  const { columns, basis, inverse, level, duals } = programme;
  const { rows, values } = columns[entering]!;
  const direction = Float64Array.from(inverse, (row) => rows.reduce((sum, r, k) => sum + row[r]! * values[k]!, 0));
  const leaving = leavingRow(level, direction);
  if (leaving < 0) return false;
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
    level[r] = Math.max(0, level[r]! - by * step);
  }
  level[leaving] = step;
  basis[leaving] = entering;
  return true;
}

/**
 * Brings in the column with the lowest reduced cost until none lowers the cost, or after `pivots` of them.
 * @returns how many it brought in. Dense revised simplex (Dantzig's rule). Its result need not be exact: whoever uses the duals proves a bound with them afresh.
 */
export function optimise(programme: Programme, pivots: number): number {
  for (let count = 0; count < pivots; count++) {
    let entering = -1;
    let least = -1e-6;
    programme.columns.forEach((column, c) => {
      const reduced = reducedCost(programme.duals, column);
      if (reduced < least) {
        least = reduced;
        entering = c;
      }
    });
    if (entering < 0 || !pivot(programme, entering, least)) return count;
  }
  return pivots;
}

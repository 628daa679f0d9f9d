const BIN = 0.25;

/** The outline of what is drawn above (or below) a staff, in staff spaces: where the next sign finds room. */
export interface Outline {
  /** Outermost y between two x. */
  reach(x0: number, x1: number): number;
  /** Something now stands between two x, out to y. */
  paint(x0: number, x1: number, y: number): void;
  /** Outermost y of all. */
  extreme(): number;
}

/** `side` 'above' looks for the smallest y, 'below' for the largest. `base`: y of the staff line on that side. */
export function outline(width: number, base: number, side: 'above' | 'below'): Outline {
  const bins = new Float64Array(Math.max(1, Math.ceil(width / BIN) + 1)).fill(base);
  const further = side === 'above' ? Math.min : Math.max;
  const clamp = (x: number) => Math.max(0, Math.min(bins.length - 1, Math.floor(x / BIN)));
  return {
    reach(x0, x1) {
      let y = base;
      for (let i = clamp(x0); i <= clamp(x1); i += 1) y = further(y, bins[i]!);
      return y;
    },
    paint(x0, x1, y) {
      for (let i = clamp(x0); i <= clamp(x1); i += 1) bins[i] = further(bins[i]!, y);
    },
    extreme: () => bins.reduce((a, b) => further(a, b), base),
  };
}

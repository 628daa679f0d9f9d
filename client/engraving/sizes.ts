/** Staff spaces: margins left and right of the music. */
export const MARGIN = { left: 6, right: 4 };
const NARROW_MARGIN = { left: 3, right: 3 };

/** The print: staff spaces in a line, in the height of a sheet and in the heading of the first; a staff of 7 mm on A4, as parts are printed. From memory. */
export const PAPER = { line: 100, page: 150, heading: 6 };

/** Pixels in a staff space, and how many spaces wide the music is, for a window. Tablet: portrait and wide enough for both hands. `zoom`: times the usual size. */
export function sizesFor(width: number, height: number, zoom = 1): { sp: number; kind: 'laptop' | 'tablet' | 'phone'; music: number; spacing: number } {
  const kind = width < 600 ? 'phone' : height > width && width < 1200 ? 'tablet' : 'laptop';
  const sp = (kind === 'tablet' ? 10 : 8) * zoom;
  const margin = kind === 'phone' ? NARROW_MARGIN : MARGIN;
  return { sp, kind, music: Math.max(24, Math.floor(width / sp - margin.left - margin.right)), spacing: kind === 'phone' ? 0.42 : 0.5 };
}

/** The same for the lines of the print: as large as fits the window, no larger than half as large again as usual. */
export function paperSizesFor(width: number, height: number, zoom = 1): { sp: number; music: number; spacing: number } {
  const { sp, kind } = sizesFor(width, height);
  const margin = kind === 'phone' ? NARROW_MARGIN : MARGIN;
  return { sp: Math.min(1.5 * sp, width / (PAPER.line + margin.left + margin.right)) * zoom, music: PAPER.line, spacing: 0.5 };
}

/** Staff spaces: margins left and right of the music. */
export const MARGIN = { left: 6, right: 4 };
const NARROW_MARGIN = { left: 3, right: 3 };

/** Pixels in a staff space, and how many spaces wide the music is, for a window. Tablet: portrait and wide enough for both hands. */
export function sizesFor(width: number, height: number): { sp: number; kind: 'laptop' | 'tablet' | 'phone'; music: number; spacing: number } {
  const kind = width < 600 ? 'phone' : height > width && width < 1200 ? 'tablet' : 'laptop';
  const sp = kind === 'tablet' ? 10 : 8;
  const margin = kind === 'phone' ? NARROW_MARGIN : MARGIN;
  return { sp, kind, music: Math.max(24, Math.floor(width / sp - margin.left - margin.right)), spacing: kind === 'phone' ? 0.42 : 0.5 };
}

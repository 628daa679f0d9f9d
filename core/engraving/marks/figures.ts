/**
 * The pencil's one-stroke figures and signs, as SVG path data in staff spaces: baseline at y = 0, centred on x = 0, y growing downward.
 */
export const STROKES = {
  '0': 'M.08-1.68C-.66-1.72-.62.02.02 0C.66-.02.62-1.66.0-1.66',
  '1': 'M-.26-1.28L.14-1.72L.02 .02',
  '2': 'M-.48-1.22C-.38-1.86.52-1.86.42-1.2C.34-.74-.22-.42-.52-.02C-.2-.1.2-.06.54-.06',
  '3': 'M-.44-1.46C-.2-1.84.46-1.78.38-1.34C.32-1.02.02-.94-.14-.92C.2-.98.52-.76.44-.4C.34.06-.3.12-.52-.2',
  '4': 'M.06-1.72L-.54-.56L.52-.62M.24-1.02L.12.06',
  thumb: 'M.02-1.72C-.5-1.74-.5-.66.0-.66C.52-.66.5-1.7.0-1.7M.02-.64L-.02 .04',
  extension: 'M-.32-1L.3-.3M.32-1.02L-.34-.28',
  contraction: 'M-.4-.98L-.06-.66L-.4-.34M.42-1L.08-.66L.4-.32',
  harmonic: 'M.04-1.3C-.46-1.32-.46-.42.02-.42C.5-.42.48-1.28.0-1.28',
  I: 'M.04-1.3L-.03 0M-.36-1.3L.44-1.34M-.44 0L.36-.03',
  II: 'M-.24-1.3L-.31 0M.3-1.3L.23 0M-.66-1.3L.74-1.35M-.74 0L.64-.04',
  III: 'M-.5-1.3L-.57 0M.04-1.3L-.03 0M.58-1.3L.5 0M-.92-1.3L1-1.35M-1 0L.9-.04',
  IV: 'M-.7-1.3L-.76 0M-.3-1.3L.16 0L.62-1.3M-1.02-1.32L.98-1.36',
  down: 'M-.62 .0L-.6-1.16L.6-1.2L.62 .02',
  up: 'M-.52-1.62L.0 0L.5-1.64',
  change: 'M.26-1.5L-.2 .1',
  retake: 'M-.1-1.5C.34-1.46.44-.98-.06-.62',
  hooked: 'M-.74-.16H-.2M.22-.16H.76M-.86-.6C-.46-1.24.46-1.24.88-.62',
  split: 'M-.9-.34C-.7-.9-.4-1.06-.16-1.1M.9-.34C.7-.9.4-1.06.16-1.1M0-1.6V.0',
  join: 'M-.9-.34C-.5-1.24.5-1.24.9-.34',
} as const;

export type Stroke = keyof typeof STROKES;

/** Solid shapes of the signs that have one in ink; the rest is drawn as a heavy stroke. */
export const SOLID: Partial<Record<Stroke, string>> = {
  down: 'M-.74 0V-1.3H.74V0H.42V-.62H-.42V0Z',
  up: 'M-.66-1.7H-.24L.04-.62L.3-1.7H.62L.14 0H-.1Z',
  extension: 'M-.4-1.02L-.2-1.16L0-.9L.2-1.16L.4-1.02L.14-.66L.4-.3L.2-.16L0-.42L-.2-.16L-.4-.3L-.14-.66Z',
};

const TEXTUAL = new Set<Stroke>(['0', '1', '2', '3', '4', 'I', 'II', 'III', 'IV']);

/** True for what ink writes with the figures of the text face. */
export const isLettered = (stroke: Stroke): boolean => TEXTUAL.has(stroke);

const HEIGHTS: Partial<Record<Stroke, number>> = { down: 1.25, extension: 1.1, contraction: 1.1, harmonic: 1.35, join: 1.15, hooked: 1.2, split: 1.6 };

/** Height of a sign above its baseline, in staff spaces. */
export const heightOf = (stroke: Stroke): number => HEIGHTS[stroke] ?? 1.75;

/** Half the width of a sign, in staff spaces. */
export const halfWidthOf = (stroke: Stroke): number => (stroke === 'III' ? 1.85 : stroke === 'IV' ? 1.75 : stroke === 'II' ? 1.25 : stroke === 'split' || stroke === 'join' || stroke === 'hooked' ? 0.9 : 0.62);

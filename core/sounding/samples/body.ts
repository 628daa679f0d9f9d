import type { InstrumentName } from '../../music/part.ts';

interface Resonance {
  hertz: number;
  /** Sharpness. */
  q: number;
  decibels: number;
}

/**
 * What a body does to its strings: the air in it, two modes of the plates, the hill of the bridge. Places from memory of the textbooks on the physics of
 * instruments (violin: air 275, plates 440 and 540, hill 2500 Hz; viola, cello and bass lower by size), sharpness and height chosen by ear, not measured.
 */
const BODIES: Record<InstrumentName, readonly Resonance[]> = {
  violin: [{ hertz: 275, q: 6, decibels: 6 }, { hertz: 440, q: 7, decibels: 5 }, { hertz: 540, q: 7, decibels: 6 }, { hertz: 1300, q: 2, decibels: -4 }, { hertz: 2500, q: 1.5, decibels: 6 }],
  viola: [{ hertz: 220, q: 6, decibels: 6 }, { hertz: 350, q: 7, decibels: 5 }, { hertz: 430, q: 7, decibels: 6 }, { hertz: 1100, q: 2, decibels: -4 }, { hertz: 2000, q: 1.5, decibels: 5 }],
  cello: [{ hertz: 100, q: 6, decibels: 6 }, { hertz: 180, q: 7, decibels: 6 }, { hertz: 220, q: 7, decibels: 5 }, { hertz: 600, q: 2, decibels: -3 }, { hertz: 1500, q: 1.5, decibels: 5 }],
  'double-bass': [{ hertz: 60, q: 5, decibels: 6 }, { hertz: 100, q: 6, decibels: 6 }, { hertz: 130, q: 6, decibels: 4 }, { hertz: 400, q: 2, decibels: -3 }, { hertz: 800, q: 1.5, decibels: 4 }],
};
/** Where the brightness ends. */
const SOFTENS = 5000;
/** A filter stands below this share of the sampling rate. */
const HIGHEST = 0.45;

type Filter = readonly [b0: number, b1: number, b2: number, a1: number, a2: number];

/** A peak of so many decibels (R. Bristow-Johnson, Cookbook formulae for audio EQ biquad filter coefficients, from memory). */
function peak({ hertz, q, decibels }: Resonance, rate: number): Filter {
  const a = 10 ** (decibels / 40);
  const w = (2 * Math.PI * hertz) / rate;
  const alpha = Math.sin(w) / (2 * q);
  const a0 = 1 + alpha / a;
  return [(1 + alpha * a) / a0, (-2 * Math.cos(w)) / a0, (1 - alpha * a) / a0, (-2 * Math.cos(w)) / a0, (1 - alpha / a) / a0];
}

/** Two poles that take away what lies above (same source). */
function soften(hertz: number, rate: number): Filter {
  const w = (2 * Math.PI * hertz) / rate;
  const alpha = Math.sin(w) / Math.SQRT2;
  const [cos, a0] = [Math.cos(w), 1 + alpha];
  return [(1 - cos) / 2 / a0, (1 - cos) / a0, (1 - cos) / 2 / a0, (-2 * cos) / a0, (1 - alpha) / a0];
}

function through(samples: Float32Array, [b0, b1, b2, a1, a2]: Filter): void {
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < samples.length; i += 1) {
    const x = samples[i]!;
    const y = b0 * x + b1 * x1 + b2 * x2 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    samples[i] = y;
  }
}

/** The sound of the strings as the body gives it on, in place. `rate` in samples a second. Example: a violin's 2500 Hz come out 6 dB higher against 200 Hz. */
export function throughBody(samples: Float32Array, instrument: InstrumentName, rate: number): void {
  for (const resonance of BODIES[instrument]) if (resonance.hertz < HIGHEST * rate) through(samples, peak(resonance, rate));
  through(samples, soften(Math.min(SOFTENS, HIGHEST * rate), rate));
}

/** Measures pitch without knowing how the samples were made: the difference function of a frame against itself (autocorrelation), its first deep dip. */
const FRAME = 0.012;
const LONGEST = 1 / 150;
const DEEP = 0.2;
/** Quieter frames have no pitch: the body rings on after the last note. */
const QUIET = 0.004;

export interface Pitched {
  at: number;
  /** MIDI key, with cents as a fraction. */
  key: number;
}

function periodAt(samples: Float32Array, begin: number, rate: number): number | null {
  const [size, most] = [Math.round(FRAME * rate), Math.round(LONGEST * rate)];
  const normal = new Float64Array(most + 1);
  let sum = 0;
  let power = 0;
  for (let i = 0; i < size; i += 1) power += samples[begin + i]! ** 2;
  if (power / size < QUIET ** 2) return null;
  for (let lag = 1; lag <= most; lag += 1) {
    let difference = 0;
    for (let i = 0; i < size; i += 1) difference += (samples[begin + i]! - samples[begin + i + lag]!) ** 2;
    sum += difference;
    normal[lag] = sum === 0 ? 1 : (difference * lag) / sum;
  }
  for (let lag = 2; lag < most; lag += 1) {
    if (normal[lag]! > DEEP || normal[lag + 1]! < normal[lag]!) continue;
    const [a, b, c] = [normal[lag - 1]!, normal[lag]!, normal[lag + 1]!];
    return lag + (a - c) / (2 * (a - 2 * b + c));
  }
  return null;
}

/** Pitch every 4 ms; moments without a clear one are left out. `at` is the middle of the frame and its echo. */
export function pitchTrack(samples: Float32Array, rate: number): Pitched[] {
  const track: Pitched[] = [];
  for (let at = 0; (at + FRAME + LONGEST) * rate + 1 < samples.length; at += 0.004) {
    const period = periodAt(samples, Math.round(at * rate), rate);
    if (period !== null) track.push({ at: at + FRAME / 2 + period / rate / 2, key: 69 + 12 * Math.log2(rate / period / 440) });
  }
  return track;
}

/** Moments at which the pitch is between notes: farther than `cents` from every key of the line. */
export function between(track: readonly Pitched[], keys: readonly number[], cents = 60): number[] {
  return track.filter(({ key }) => keys.every((other) => Math.abs(key - other) > cents / 100)).map(({ at }) => at);
}

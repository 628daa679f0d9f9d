/** Level in dB in windows of `window` seconds, one every half window, each with its middle; measured on the samples alone. */
export function loudness(samples: Float32Array, rate: number, window = 0.012): { at: number; decibels: number }[] {
  const size = Math.round(window * rate);
  const levels: { at: number; decibels: number }[] = [];
  for (let begin = 0; begin + size <= samples.length; begin += Math.round(size / 2)) {
    let power = 0;
    for (let i = begin; i < begin + size; i += 1) power += samples[i]! ** 2;
    levels.push({ at: (begin + size / 2) / rate, decibels: 10 * Math.log10(power / size + 1e-12) });
  }
  return levels;
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** How far the level falls within 0.1 s of a moment, below its median around it. */
export function dipNear(levels: readonly { at: number; decibels: number }[], moment: number, around = 0.4): number {
  const near = levels.filter(({ at }) => Math.abs(at - moment) < around).map(({ decibels }) => decibels);
  const least = Math.min(...levels.filter(({ at }) => Math.abs(at - moment) < 0.1).map(({ decibels }) => decibels));
  return median(near) - least;
}

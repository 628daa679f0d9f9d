/** Samples of one period. */
export const PERIOD = 1024;

/** One period of a string under the bow, a falling slope (Helmholtz motion), made of its first `harmonics` alone so that nothing folds back. */
function period(harmonics: number): Float32Array {
  const table = new Float32Array(PERIOD + 1);
  for (let h = 1; h <= harmonics; h += 1) for (let i = 0; i <= PERIOD; i += 1) table[i]! += ((2 / Math.PI) * Math.sin((2 * Math.PI * h * i) / PERIOD)) / h;
  return table;
}

/**
 * The periods of a bowed string by the highest frequency they are played at: as many harmonics as stay below `limit` Hz, rounded down to a power of two.
 * Source: the bowed string moves in a sharp corner, its force on the bridge is a saw tooth (Helmholtz; textbook, from memory).
 * Example: 440 Hz with a limit of 20,000 has 32 harmonics.
 */
export function stringTables(limit: number): (hertz: number) => Float32Array {
  const made = new Map<number, Float32Array>();
  return (hertz) => {
    const harmonics = 2 ** Math.floor(Math.log2(Math.max(1, Math.min(limit / hertz, PERIOD / 4))));
    if (!made.has(harmonics)) made.set(harmonics, period(harmonics));
    return made.get(harmonics)!;
  };
}

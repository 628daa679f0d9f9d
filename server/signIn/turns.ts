/** Lets so many work at once; the next wait in line. Null where the line is too long already. */
export function createTurns(atOnce: number, longestLine: number): <T>(work: () => Promise<T>) => Promise<T | null> {
  let working = 0;
  const line: (() => void)[] = [];
  return async (work) => {
    if (working >= atOnce) {
      if (line.length >= longestLine) return null;
      // Whoever ends hands their place over, so nobody slips in between.
      await new Promise<void>((mine) => line.push(mine));
    } else working += 1;
    try {
      return await work();
    } finally {
      const next = line.shift();
      if (next) next();
      else working -= 1;
    }
  };
}

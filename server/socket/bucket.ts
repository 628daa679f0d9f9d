/** Lets `perSecond` through on average and `burst` at once. */
export function createBucket(burst: number, perSecond: number, now: () => number = () => performance.now()): () => boolean {
  let level = burst;
  let last = now();
  return () => {
    const time = now();
    level = Math.min(burst, level + ((time - last) / 1000) * perSecond);
    last = time;
    if (level < 1) return false;
    level -= 1;
    return true;
  };
}

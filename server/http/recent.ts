/** Remembers the last `size` answers by key; two who ask at once wait for one answer. What failed is asked again. */
export function recent<Rest extends unknown[], T>(size: number, make: (key: string, ...rest: Rest) => Promise<T>): (key: string, ...rest: Rest) => Promise<T> {
  const kept = new Map<string, Promise<T>>();
  return (key, ...rest) => {
    const answer = kept.get(key) ?? make(key, ...rest);
    kept.delete(key);
    kept.set(key, answer);
    answer.catch(() => kept.delete(key));
    for (const oldest of kept.keys()) {
      if (kept.size <= size) break;
      kept.delete(oldest);
    }
    return answer;
  };
}

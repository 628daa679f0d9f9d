/**
 * The first index below `length` that `isThere` holds of, given that it then holds of all that follow; `length` where it holds of none. Logarithmic.
 * Example: of 1, 3, 5 and 7 the first above 4 has index 2.
 */
export function firstIndex(length: number, isThere: (index: number) => boolean): number {
  let [low, high] = [0, length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isThere(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Features are hashed into this many weights: 2^18 loses nothing against exact keys. */
export const SLOT_BITS = 18;
export const SLOTS = 1 << SLOT_BITS;

/** Collects the weight slots of one place or step; reused from call to call. */
export class Slots {
  readonly at = new Int32Array(256);
  count = 0;

  /** Adds the feature `template` with up to five small whole values. */
  add(template: number, a: number, b = 0, c = 0, d = 0, e = 0): void {
    let hash = Math.imul(template + 1, 0x9e3779b1);
    hash = Math.imul(hash ^ (a + 128), 0x85ebca6b);
    hash ^= hash >>> 15;
    hash = Math.imul(hash ^ (b + 128), 0xc2b2ae35);
    hash ^= hash >>> 13;
    hash = Math.imul(hash ^ (c + 128), 0x27d4eb2f);
    hash ^= hash >>> 15;
    hash = Math.imul(hash ^ (d + 128), 0x165667b1);
    hash ^= hash >>> 13;
    hash = Math.imul(hash ^ (e + 128), 0x9e3779b1);
    hash ^= hash >>> 16;
    this.at[this.count] = hash & (SLOTS - 1);
    this.count += 1;
  }

  clear(): void {
    this.count = 0;
  }
}

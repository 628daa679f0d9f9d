/**
 * What a score may contain at most. Chosen, not measured: each is at least five times what the largest orchestral movement we know needs
 * (26 million characters, 1.3 million elements, 14 levels).
 */
export const LIMITS = {
  depth: 100,
  attributes: 100,
  name: 200,
  /** One text, comment, attribute or instruction. */
  run: 1_000_000,
  elements: 8_000_000,
  characters: 200_000_000,
} as const;

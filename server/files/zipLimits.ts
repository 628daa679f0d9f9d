/** What an archive may hold. */
export interface ZipLimits {
  entries: number;
  /** All entries unpacked, bytes. */
  total: number;
  /** Unpacked to packed, for entries over `ratioFrom` bytes. */
  ratio: number;
  ratioFrom: number;
}

/** What a compressed score may hold. A real symphony is 26 MB in 1.1 MB (24 times); the caps leave room for ten times that. Chosen, not measured. */
export const ZIP_LIMITS = {
  entries: 500,
  total: 300_000_000,
  ratio: 250,
  ratioFrom: 1_000_000,
} as const satisfies ZipLimits;

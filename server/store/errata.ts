import type { ErratumView } from '../../core/archive/erratum.ts';

export type NewErratum = Omit<ErratumView, 'id' | 'settled'>;

/** Wrong notes of the editions on the shelf, apart from everything that is marked in them. */
export interface Errata {
  add(work: string, erratum: NewErratum): Promise<ErratumView | null>;
  /** In the order of the measures. */
  of(work: string): Promise<ErratumView[]>;
  /** Put right since, or not after all. False when there is no such erratum. */
  settle(id: string, at: Date | null): Promise<boolean>;
}

/** Errata as they are listed: by measure, then by when they were found. */
export const inOrder = (a: ErratumView, b: ErratumView): number => a.measure - b.measure || (a.at < b.at ? -1 : a.at > b.at ? 1 : 0);

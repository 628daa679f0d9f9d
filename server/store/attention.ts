import type { z } from 'zod';
import type { LettersBody } from '../../core/agreement/wire/http.ts';

/** Where letters go, and in which language they speak. */
export type LettersWish = z.infer<typeof LettersBody>;

/** Somebody who wants letters. */
export interface Correspondent extends LettersWish {
  person: string;
  name: string;
  sentAt: Date | null;
  remindedAt: Date | null;
  /** How far in the log of each part they know what happened: seen there, or told by a letter. */
  known: Map<string, number>;
}

/** What people have seen of the parts, and who wants letters about the rest. An address is given to its owner and to the post alone. */
export interface Attention {
  /** Last row seen, by part. */
  seen(person: string): Promise<Map<string, number>>;
  /** Never goes back. False when there is no such part. */
  see(person: string, part: string, seq: number): Promise<boolean>;
  letters(person: string): Promise<LettersWish | null>;
  /** Null forgets the address. */
  setLetters(person: string, wish: LettersWish | null): Promise<void>;
  correspondents(): Promise<Correspondent[]>;
  /** What a letter told, or need not tell: rows by part. Times stay where they are not given. */
  tell(person: string, told: ReadonlyMap<string, number>, times: { sentAt?: Date; remindedAt?: Date }): Promise<void>;
}

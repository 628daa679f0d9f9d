import type { LetterLanguage } from '../../core/agreement/wire/signIn.ts';
import type { Known } from './known.ts';

/** An address in small letters, and the language that letters to it speak. */
export interface LetterTo {
  address: string;
  language: LetterLanguage;
}

export interface OwnAddress extends LetterTo {
  /** Unconfirmed it is only what its owner types beside their password. */
  confirmed: boolean;
}

export interface Invitation {
  id: string;
  person: Known;
  address: string | null;
  until: Date;
}

/** Somebody on their way to the orchestra's own sign-in and back. */
export interface Errand {
  /** Whose sign-in is to know the identity from then on; null: it is looked up. */
  session: string | null;
  /** Hash of the invitation they came with. */
  link: Uint8Array | null;
}

/** The ways by which people sign in. Tokens arrive hashed, addresses in small letters; times come from the caller. */
export interface Ways {
  address(person: string): Promise<OwnAddress | null>;
  whoseAddress(address: string): Promise<{ person: Known; to: OwnAddress } | null>;
  /** From now on the one address of a person. A confirmed one displaces somebody else's unconfirmed one; false when it is another person's. */
  setAddress(person: string, to: LetterTo, confirmed: Date | null): Promise<boolean>;
  forgetAddress(person: string): Promise<void>;
  /** An address to be confirmed; the claim before it is gone. */
  claimAddress(person: string, tokenHash: Uint8Array, to: LetterTo, expires: Date): Promise<void>;
  claimed(person: string, now: Date): Promise<string | null>;
  /** What a person claimed with this token, once. */
  takeClaim(person: string, tokenHash: Uint8Array, now: Date): Promise<LetterTo | null>;

  /** As argon2id wrote it. */
  password(person: string): Promise<string | null>;
  /** Null does away with it. */
  setPassword(person: string, hash: string | null, now: Date): Promise<void>;

  knowsIdentity(person: string, issuer: string): Promise<boolean>;
  whoseIdentity(issuer: string, subject: string): Promise<Known | null>;
  /** False when it is another person's. */
  bindIdentity(person: string, issuer: string, subject: string, now: Date): Promise<boolean>;
  forgetIdentities(person: string): Promise<void>;
  beginErrand(tokenHash: Uint8Array, errand: Errand, expires: Date): Promise<void>;
  /** Once; null when there is none, or it took too long. */
  takeErrand(tokenHash: Uint8Array, now: Date): Promise<Errand | null>;

  /** Those of an ensemble's people that were neither used nor withdrawn and are not too old, the next to end first. */
  invitations(ensemble: string, now: Date): Promise<Invitation[]>;
  /** False when the ensemble has no such open one. */
  withdraw(ensemble: string, id: string, now: Date): Promise<boolean>;
}

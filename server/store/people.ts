import type { HandProfile } from '../../core/hand/reach.ts';
import type { Me } from '../../core/agreement/wire/http.ts';

export interface Person {
  id: string;
  name: string;
  librarian: boolean;
}

/** A sign-in that holds now. */
export interface LiveSession {
  id: string;
  person: Person;
}

/** Who there is, and who is signed in. Tokens arrive hashed; times come from the caller. */
export interface People {
  add(name: string, librarian: boolean): Promise<Person>;
  byId(id: string): Promise<Person | null>;
  all(): Promise<Person[]>;
  memberships(person: string): Promise<Me['memberships']>;
  addLink(person: string, tokenHash: Uint8Array, expires: Date): Promise<void>;
  /** The link's person, once: afterwards, or when it has expired, null. */
  useLink(tokenHash: Uint8Array, now: Date): Promise<Person | null>;
  openSession(person: string, tokenHash: Uint8Array, expires: Date): Promise<string>;
  session(tokenHash: Uint8Array, now: Date): Promise<LiveSession | null>;
  revoke(session: string, now: Date): Promise<void>;
  /** A player's own hand, for that player alone; null where they have told nothing. */
  hand(person: string): Promise<HandProfile | null>;
  /** Null forgets it. */
  setHand(person: string, hand: HandProfile | null): Promise<void>;
}

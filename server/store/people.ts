import type { Me } from '../../core/agreement/wire/http.ts';
import type { Known, Standing } from './door.ts';

/** Somebody in an ensemble. */
export interface Person extends Known, Standing {}

/** Who belongs to one ensemble. */
export interface People {
  add(name: string, librarian: boolean, deputy?: boolean): Promise<Person>;
  byId(id: string): Promise<Person | null>;
  all(): Promise<Person[]>;
  memberships(person: string): Promise<Me['memberships']>;
  /** Programmes that a person sits in and that are not over on `day` (ISO date): what a deputy may open. */
  seatedIn(person: string, day: string): Promise<string[]>;
}

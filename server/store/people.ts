import type { Me } from '../../core/agreement/wire/http.ts';
import type { Known, Standing } from './door.ts';
import type { By } from './trail.ts';

/** Somebody in an ensemble. */
export interface Person extends Known, Standing {}

/** Somebody who has left. */
export interface Gone extends Known {
  leftAt: Date;
}

/** Why a standing was not changed: the person does not belong here, or nobody would be left who can do the librarian's work. */
export type NotChanged = 'notHere' | 'lastLibrarian';

/** Who belongs to one ensemble. `by` is told in the trail with what was done. */
export interface People {
  add(name: string, librarian: boolean, deputy?: boolean, by?: By): Promise<Person>;
  /** Gives and takes the librarian's work; a member becomes a deputy, and gives up their usual seats, or a deputy a member. */
  stand(person: string, standing: Standing, by?: By): Promise<Person | NotChanged>;
  /** Ends the belonging: their seats are free, they reach nothing more, what they did keeps their name. */
  leave(person: string, by?: By): Promise<NotChanged | null>;
  /** Those who have left, the last one first. */
  gone(): Promise<Gone[]>;
  /** Somebody who had left is here again, as themselves. Null where nobody had. */
  comeBack(person: string, standing: Standing, by?: By): Promise<Person | null>;
  byId(id: string): Promise<Person | null>;
  all(): Promise<Person[]>;
  memberships(person: string): Promise<Me['memberships']>;
  /** Programmes that a person sits in and that are not over on `day` (ISO date): what a deputy may open. */
  seatedIn(person: string, day: string): Promise<string[]>;
}

import { z } from 'zod';
import type { Part } from '../../music/part.ts';
import type { DocumentFault } from '../../musicxml/fault.ts';
import type { SeatId } from '../../music/seat.ts';
import type { CarriedPlace } from '../carried.ts';
import type { LogEntry } from '../event.ts';
import type { Role } from '../people.ts';
import type { AgreementState, Stage } from '../state.ts';
import type { Waiting } from '../waiting/waitsFor.ts';
import type { ProgrammeBody, ProgrammeSeating } from './programme.ts';
import { LetterLanguage } from './signIn.ts';

/** Section settings that the checker reads; all have defaults in core/check/settings.ts. */
export type SectionSettings = Record<string, unknown>;

export interface Me {
  id: string;
  name: string;
  /** Of the ensemble that lies open. */
  librarian: boolean;
  /** Here for single programmes only, each until its last day. */
  deputy: boolean;
  /** The ensemble that lies open. */
  ensemble: { id: string; name: string };
  /** All that this sign-in reaches. */
  ensembles: { id: string; name: string }[];
  memberships: { section: string; sectionName: string; role: 'principal' | 'player'; seat: SeatId | null }[];
}

export interface SectionView {
  id: string;
  name: string;
  instrument: string;
  /** Front to back; an absent or single place has person null. */
  seats: { seat: SeatId; person: { id: string; name: string } | null }[];
  principal: { id: string; name: string } | null;
  settings: SectionSettings;
}

export interface WorkView {
  id: string;
  title: string;
  composer: string;
  fileName: string;
  importedAt: string;
  parts: {
    id: string;
    name: string;
    instrument: string | null;
    section: { id: string; name: string } | null;
    measures: number;
    stage: Stage;
    locked: boolean;
    /** Open proposals. */
    open: number;
    head: number;
    /** Rises from 1 with every corrected edition. */
    revision: number;
  }[];
}

export interface ProgrammeView extends ProgrammeBody {
  id: string;
  works: WorkView[];
  /** Of the sections that sit otherwise than usual. */
  seatings: ProgrammeSeating[];
}

/** GET /api/shelf */
export interface Shelf {
  programmes: ProgrammeView[];
  sections: SectionView[];
  /** Only for librarians; empty for others. */
  people: { id: string; name: string; librarian: boolean; deputy: boolean }[];
}

/** POST /api/programmes/:programme/works and POST /api/works/:work/editions answer this: what was laid on the shelf. */
export interface ImportAnswer {
  work: WorkView;
  /** For a corrected edition: notes that kept their id, are new, are gone. */
  notes: { kept: number; added: number; removed: number };
}

/** GET /api/parts/:part */
export interface PartView {
  id: string;
  work: { id: string; title: string; composer: string };
  part: Part;
  section: SectionView | null;
  /** My roles for this part. */
  roles: Role[];
  seat: SeatId | null;
  /** Last row of its log that I have seen; 0 before the first. */
  seen: number;
  /** State at `head`; catch up from there. */
  state: AgreementState;
  head: number;
}

/** GET /api/me/waiting: what waits for me in the parts of my sections, in the order of the shelf; parts where nothing does are left out. */
export interface WaitingView {
  parts: {
    id: string;
    name: string;
    work: { id: string; title: string };
    programme: string;
    waits: Waiting[];
    /** Printed numbers of the measures they name, by ordinal. */
    numbers: Record<number, string>;
  }[];
}

/** What became of a mark that did not go along: put on a note of the new edition, or left out. */
export interface Settled {
  how: 'put' | 'leftOut';
  by: string;
  name: string;
  /** ISO 8601, UTC. */
  at: string;
}

/** GET /api/parts/:part/carried: how the part differs from an edition it had before, the last one unless `revision` asks for another. 404 where there was none. */
export interface CarriedView {
  /** Revision of the part that it was. */
  revision: number;
  /** Of the document it came in. */
  fileName: string;
  /** All it had before, the last one first. */
  earlier: { revision: number; fileName: string }[];
  places: CarriedPlace[];
  /** By the key of a mark. */
  settled: Record<string, Settled>;
}

/** POST /api/parts/:part/carried */
export const SettleBody = z.strictObject({ revision: z.int().positive().max(2 ** 31 - 1), key: z.string().min(1).max(300), how: z.enum(['put', 'leftOut']).nullable() });

/** GET /api/parts/:part/log?after=N */
export interface LogView {
  head: number;
  entries: LogEntry[];
}

/** Every error body. `code` is permanent; a bug carries an `incident` name to say over the telephone. */
export interface Trouble extends DocumentFault {
  incident?: string;
}

export const SubmitBody = z.strictObject({ operation: z.uuid(), input: z.unknown(), protocol: z.int().optional() });
/** A player's own hand: reach beside the usual one, and a shorter fourth finger. */
export const HandBody = z.strictObject({ factor: z.number().min(0.8).max(1.1), shortFourth: z.boolean() });

export const SeenBody = z.strictObject({ seq: z.int().nonnegative().max(2 ** 31 - 1) });
/** Where letters go, and in which language they speak. */
export const LettersBody = z.strictObject({ address: z.email().max(200), language: LetterLanguage });

/** GET, PUT and DELETE /api/me/letters. `minutes`: one letter at most in so many; null where this library sends none. */
export interface LettersView {
  minutes: number | null;
  wish: z.infer<typeof LettersBody> | null;
}

export const NewPerson = z.strictObject({
  name: z.string().trim().min(1).max(80),
  librarian: z.boolean().default(false),
  deputy: z.boolean().default(false),
  /** Where the invitation goes; without it the librarian hands it out. */
  letter: z.strictObject({ address: z.email().max(200), language: LetterLanguage }).optional(),
});
const name = z.string().trim().min(1).max(80);
/** PUT /api/people/:person/standing and POST /api/people/:person/back. `myself`: a librarian means their own standing, not by accident. */
export const StandingBody = z.strictObject({ librarian: z.boolean(), deputy: z.boolean(), myself: z.boolean().default(false) });
/** PUT /api/ensemble */
export const EnsembleBody = z.strictObject({ name });
/** GET /api/people/gone: who has left the ensemble that lies open, the last one first. */
export interface GoneView {
  gone: { id: string; name: string; leftAt: string }[];
}
/** POST /api/me/erase and POST /api/people/:person/erase: the person's name, typed. `comments`: what they said in comments goes too. */
export const EraseBody = z.strictObject({ name, comments: z.boolean().default(false) });
/** PUT /api/me/ensemble: which of my ensembles lies open. */
export const LookIntoBody = z.strictObject({ ensemble: z.string().min(1).max(64) });
export const NewSection = z.strictObject({ name: z.string().trim().min(1).max(60), instrument: z.enum(['violin', 'viola', 'cello', 'double-bass']) });
export const Seating = z.strictObject({
  seats: z.array(z.strictObject({ seat: z.string().regex(/^[1-9][0-9]?[oi]$/), person: z.string().nullable() })).max(40),
  principal: z.string().nullable(),
});
export const AssignPart = z.strictObject({ section: z.string().nullable() });

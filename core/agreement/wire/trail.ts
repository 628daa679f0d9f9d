import { z } from 'zod';

/** What is told in an ensemble's trail. Kinds are permanent: a row may be read years later. */
export const TRAIL_KINDS = [
  // at the door
  'signedIn', 'signInFailed', 'signedOut', 'sessionEnded', 'wayInSet', 'wayInRemoved', 'linkMade', 'linkWithdrawn',
  // people
  'personAdded', 'personLeft', 'personBack', 'roleGiven', 'roleTaken', 'becameMember', 'becameDeputy', 'dataHandedOut', 'erased',
  // the ensemble and its sections
  'ensembleNamed', 'sectionAdded', 'seatingChanged', 'settingsChanged',
  // music
  'programmeAdded', 'programmeChanged', 'partAssigned', 'workLaid', 'filesLaid', 'editionLaid', 'setKept', 'archiveTakenIn', 'handedOut',
] as const;
export type TrailKind = (typeof TRAIL_KINDS)[number];

/** What happens at the door, to one person. */
export const DOOR_KINDS = ['signedIn', 'signInFailed', 'signedOut', 'sessionEnded', 'wayInSet', 'wayInRemoved', 'linkMade', 'linkWithdrawn', 'dataHandedOut', 'erased'] as const satisfies readonly TrailKind[];
export type DoorKind = (typeof DOOR_KINDS)[number];

/** Names of things as they were then (never of people): "work", "part", "programme", "section", "season", "what", "reader", "way", "role", "name". */
export type TrailFacts = Record<string, string>;

type Named = { id: string; name: string };

export interface TrailRow {
  id: string;
  /** ISO 8601, UTC. */
  at: string;
  kind: TrailKind;
  /** Who did it, by the name they had then; null: the library itself. */
  by: Named | null;
  /** The person it happened to. */
  about: Named | null;
  section: string | null;
  part: string | null;
  facts: TrailFacts;
}

/** GET /api/trail: the last rows first. */
export interface TrailView {
  rows: TrailRow[];
  /** Ask again with this for the rows before; null where there are none. */
  before: string | null;
}

const Id = z.string().min(1).max(64);
export const TrailAsked = z.object({ person: Id.optional(), kind: z.enum(TRAIL_KINDS).optional(), before: z.string().max(120).optional() });

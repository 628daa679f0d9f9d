import type { LogEntry } from '../../core/agreement/event.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { ErratumView } from '../../core/archive/erratum.ts';
import type { KeptSet } from '../../core/archive/keptSet.ts';
import type { SectionSettings } from '../../core/agreement/wire/http.ts';
import type { TrailRow } from '../../core/agreement/wire/trail.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { HandProfile } from '../../core/hand/reach.ts';
import type { Part } from '../../core/music/part.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { LettersWish } from './attention.ts';
import type { Known, LinkMore, SessionRow } from './door.ts';
import type { Errand, LetterTo } from './ways.ts';
import type { EarlierEdition, NewEdition } from './library.ts';
import type { RefusedOperation, Ruling } from './partLog.ts';
import type { Person } from './people.ts';
import type { Member } from './sections.ts';

export interface MemoryPart {
  id: string;
  work: string;
  edition: string;
  section: string | null;
  content: Part;
  revision: number;
  rewritten: number;
  log: LogEntry[];
  shelf: Ruling['shelf'];
  earlier: (Omit<EarlierEdition, 'fileName'> & { content: Part })[];
  snapshots: { state: AgreementState; protocol: number }[];
}

type Letters = Map<string, LettersWish & { sentAt: Date | null; remindedAt: Date | null }>;

/** What the memory store holds of one ensemble, one map for each table. */
export interface Shelves {
  people: Map<string, Person>;
  /** Who has left, and when. */
  departures: Map<string, Date>;
  sections: Map<string, { id: string; name: string; instrument: string; seats: SeatId[]; settings: SectionSettings }>;
  /** Of all ensembles: a person has one address. */
  letters: Letters;
  /** By person, then by part. */
  attention: Map<string, Map<string, { seen: number; told: number }>>;
  memberships: { person: string; section: string; principal: boolean; seat: SeatId | null }[];
  programmes: Map<string, ProgrammeBody>;
  /** By programme and section. */
  seatings: Map<string, { programme: string; section: string; seats: SeatId[]; members: Member[] }>;
  works: Map<string, { id: string; programme: string; title: string; composer: string; editions: string[] }>;
  editions: Map<string, NewEdition>;
  parts: Map<string, MemoryPart>;
  refused: Map<string, RefusedOperation>;
  kept: Map<string, KeptSet>;
  errata: Map<string, ErratumView & { work: string }>;
  /** In the order it was told. */
  trail: TrailRow[];
}

const emptyShelves = (letters: Letters): Shelves => ({
  people: new Map(),
  departures: new Map(),
  sections: new Map(),
  letters,
  attention: new Map(),
  memberships: [],
  programmes: new Map(),
  seatings: new Map(),
  works: new Map(),
  editions: new Map(),
  parts: new Map(),
  refused: new Map(),
  kept: new Map(),
  errata: new Map(),
  trail: [],
});

interface EnsembleShelves {
  id: string;
  name: string;
  shelves: Shelves;
}

/** What it holds of all ensembles together. Keys of links and sessions are hashes in hexadecimal. */
export interface Entry {
  persons: Map<string, Known>;
  links: Map<string, LinkMore & { id: string; person: string; expires: Date; used: boolean; ensemble: string | null }>;
  sessions: Map<string, SessionRow & { person: string; expires: Date; revoked: boolean; open: string | null; proven: Date }>;
  ways: {
    addresses: Map<string, LetterTo & { person: string; confirmed: boolean }>;
    /** By person. */
    claims: Map<string, LetterTo & { token: string; expires: Date }>;
    /** By person. */
    passwords: Map<string, string>;
    identities: { person: string; issuer: string; subject: string }[];
    errands: Map<string, Errand & { expires: Date }>;
  };
  hands: Map<string, HandProfile>;
  ensembles: {
    open(id: string, name: string): EnsembleShelves;
    get(id: string): EnsembleShelves | undefined;
    values(): Iterable<EnsembleShelves>;
    /** Empty, for an ensemble that is not there. */
    none: EnsembleShelves;
  };
}

export function emptyEntry(): Entry {
  const letters: Letters = new Map();
  const ensembles = new Map<string, EnsembleShelves>();
  const shelved = (id: string, name: string): EnsembleShelves => ({ id, name, shelves: emptyShelves(letters) });
  return {
    persons: new Map(),
    links: new Map(),
    sessions: new Map(),
    hands: new Map(),
    ways: { addresses: new Map(), claims: new Map(), passwords: new Map(), identities: [], errands: new Map() },
    ensembles: {
      get: (id) => ensembles.get(id),
      values: () => ensembles.values(),
      none: shelved('', ''),
      open(id, name) {
        const one = shelved(id, name);
        ensembles.set(id, one);
        return one;
      },
    },
  };
}

export const hex = (hash: Uint8Array): string => Buffer.from(hash).toString('hex');

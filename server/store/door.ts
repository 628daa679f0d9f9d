import type { SessionView, Way } from '../../core/agreement/wire/signIn.ts';
import type { By, DoorNews } from './trail.ts';
import type { HandProfile } from '../../core/hand/reach.ts';
import type { Known } from './known.ts';
import type { LetterTo, Ways } from './ways.ts';

export type { Known };

export interface EnsembleName {
  id: string;
  name: string;
}

/** What a person is in an ensemble. A deputy is there for single programmes only, each until its last day. */
export interface Standing {
  librarian: boolean;
  deputy: boolean;
}

/** An ensemble that a person belongs to. */
export interface Belonging extends Standing {
  ensemble: EnsembleName;
}

/** A sign-in that holds now. */
export interface LiveSession {
  id: string;
  person: Known;
  /** Those that this sign-in reaches, in the order in which they came to them. */
  belongings: Belonging[];
  /** The one ensemble it reaches, where a librarian's link opened it; null: all of the person's. */
  only: string | null;
  /** The ensemble that lies open; null where none was chosen. */
  open: string | null;
  begun: Date;
  /** As last written down, a few minutes behind at most. */
  used: Date;
  /** When whoever is signed in last proved who they are. */
  proven: Date;
}

/** By which way somebody comes in, on what, and when. */
export interface Coming extends Pick<SessionView, 'browser' | 'device'> {
  way: Way;
  at?: Date;
}

/** A sign-in as its owner sees it in a list. */
export interface SessionRow extends Omit<Coming, 'at'> {
  id: string;
  only: string | null;
  begun: Date;
  used: Date;
}

/** What makes a sign-in link more than one that a librarian hands out. */
export interface LinkMore {
  /** For somebody new. */
  invitation: boolean;
  /** Where it goes by letter. */
  letter: LetterTo | null;
}

export interface UsedLink extends LinkMore {
  person: Known;
  ensemble: string | null;
}

/** Why an invitation could not be taken up: used, withdrawn or too old; whoever was invited has come in as somebody new; the one who asks is there already. */
export type NotTakenUp = 'over' | 'cameIn' | 'hereAlready';

export interface KeptAtDoor {
  /** ISO 8601, UTC. */
  since: string;
  sessions: { began: string; ends: string; ended: string | null; ensemble: string | null }[];
  links: { ends: string; used: string | null }[];
}

/** What an erasure touched: sign-ins that ended, and parts whose logs read otherwise now. */
export interface Erased {
  sessions: string[];
  parts: { ensemble: string; part: string }[];
}

/** The name of whoever was erased. */
export const FORMER = 'Former player';

/** Who there is in all ensembles, and who is signed in. Tokens arrive hashed; times come from the caller. No music is reached from here. */
export interface Door extends Ways {
  person(id: string): Promise<Known | null>;
  /** null when the name is taken. */
  addEnsemble(name: string): Promise<EnsembleName | null>;
  ensembles(): Promise<EnsembleName[]>;
  /** False when the name is taken or there is no such ensemble. */
  nameEnsemble(id: string, name: string, by?: By): Promise<boolean>;
  /** Somebody who is known comes to one more ensemble, or stands there otherwise than before. */
  join(ensemble: string, person: string, standing: Standing): Promise<void>;
  /** `ensemble`: whose librarian made it; what it opens reaches no other. Null: for all of the person's. */
  addLink(person: string, tokenHash: Uint8Array, expires: Date, ensemble: string | null, more?: LinkMore): Promise<void>;
  /** Whose link it is, once: afterwards, or when it has expired, null. */
  useLink(tokenHash: Uint8Array, now: Date): Promise<UsedLink | null>;
  /**
   * Somebody who is known takes up an invitation as themselves: they stand and sit as whoever was invited did, whose name was only there to be invited by and goes.
   * The ensemble they come to.
   */
  takeUp(tokenHash: Uint8Array, known: string, now: Date): Promise<EnsembleName | NotTakenUp>;
  /** `only`: the one ensemble that it reaches; null: all of the person's. */
  openSession(person: string, tokenHash: Uint8Array, expires: Date, only: string | null, coming?: Coming): Promise<string>;
  /** What a person is in their ensembles now, in the order in which they came to them. */
  belongings(person: string): Promise<Belonging[]>;
  /** The same for many at once. */
  belongingsOf(people: readonly string[]): Promise<Map<string, Belonging[]>>;
  session(tokenHash: Uint8Array, now: Date): Promise<LiveSession | null>;
  /** Lays one of the person's ensembles open. */
  lookInto(session: string, ensemble: string): Promise<void>;
  /** Writes down that it was used, and until when it holds now. */
  touch(session: string, now: Date, expires: Date): Promise<void>;
  /** From now on another token opens it; the one before opens nothing. `proven`: whoever is signed in proved again who they are. */
  renew(session: string, tokenHash: Uint8Array, proven: Date | null): Promise<void>;
  /** All that hold now, the last used first. */
  sessions(person: string, now: Date): Promise<SessionRow[]>;
  revoke(session: string, now: Date): Promise<void>;
  /** Links of an ensemble for somebody are void, and what they opened ends; `ways`: what they opened by ways of their own ends too. The sessions that it ended. */
  shut(ensemble: string, person: string, now: Date, ways?: boolean): Promise<string[]>;
  /** Which of these sessions hold now. */
  live(sessions: string[], now: Date): Promise<Set<string>>;
  /**
   * Tells what happened to a person at the door in every ensemble of theirs, or in the one it is about (`only`). What this store does itself is told in its own
   * transaction (`tellAtDoor` in tell.ts); this is for what is not the store's, such as a sign-in that failed.
   */
  tell(person: string, news: DoorNews, only?: string | null): Promise<void>;
  /** Ensembles that a person has left, but not been forgotten by. */
  left(person: string): Promise<EnsembleName[]>;
  /** What is kept of how a person comes in, for their own eyes; no secrets. */
  kept(person: string): Promise<KeptAtDoor>;
  /**
   * Takes a person out: they are called "Former player" wherever they were named, and everything that hangs on them alone is gone. What was agreed stays.
   * `asker`: themselves, or a librarian. `comments`: what they said in comments goes too.
   */
  erase(person: string, asker: string, comments: boolean): Promise<Erased>;
  /** A player's own hand, for that player alone; null where they have told nothing. */
  hand(person: string): Promise<HandProfile | null>;
  /** Null forgets it. */
  setHand(person: string, hand: HandProfile | null): Promise<void>;
}

export const HANDED_OUT: LinkMore = { invitation: false, letter: null };
/** Where nobody says how somebody came. */
export const UNKNOWN: Coming = { way: 'link', browser: 'other', device: 'other' };

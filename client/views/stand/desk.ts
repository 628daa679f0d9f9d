import type { Dispatch } from 'react';
import type { MarkInForce } from '../../../core/agreement/inForce.ts';
import type { LateChange } from '../../../core/agreement/sinceHandedOut.ts';
import type { AgreementState, PartFacts, Proposal } from '../../../core/agreement/state.ts';
import type { Me, PartView } from '../../../core/agreement/wire/http.ts';
import type { Finding } from '../../../core/check/finding.ts';
import type { SeatId } from '../../../core/music/seat.ts';
import type { PartSession, PartSnapshot } from '../../agreement/session.ts';
import type { Checker } from '../../checking/checker.ts';
import type { OffersOnStand } from '../../fingering/useOffers.ts';
import type { PartIndex } from '../../library/partIndex.ts';
import type { Caret, CaretAction, Walk } from '../../tools/caret/reducer.ts';
import type { LineState } from '../../tools/line/line.ts';
import type { Held, Pencil, PencilAction } from '../../tools/pencil/reducer.ts';
import type { Run } from '../../tools/run/run.ts';
import type { ElsewhereOnStand } from './elsewhere/useElsewhere.ts';
import type { BesideOnStand } from './beside/useBeside.ts';
import type { HearingOnStand } from './hearing/useHearing.ts';
import type { NoticeOnStand } from './waiting/useNotice.ts';
import type { WaitsOnStand } from './waiting/useWaits.ts';
import type { HairOnStand } from './hair/useHair.ts';

/** All that lies on one stand: the part, what the section agreed, the pencil and where it points. */
export interface Desk {
  me: Me;
  view: PartView;
  session: PartSession;
  snapshot: PartSnapshot;
  state: AgreementState;
  facts: PartFacts;
  index: PartIndex;
  seats: readonly SeatId[];
  walk: Walk;
  caret: Caret;
  move: Dispatch<CaretAction>;
  pencil: Pencil;
  write: Dispatch<PencilAction>;
  line: LineState | null;
  setLine(line: LineState | null): void;
  /** A sentence for the ledge until the next key. */
  say(sentence: string | null): void;
  message: string | null;
  /** Marks in force as the section stands by them. */
  standing: readonly MarkInForce[];
  /** The same with the draft as if inked in. */
  inForce: readonly MarkInForce[];
  checker: Checker | null;
  /** Everything the rules find, and what of it nobody has put to rest. */
  found: readonly Finding[];
  heard: readonly Finding[];
  stopped: boolean;
  history: boolean;
  setHistory(on: boolean): void;
  /** Measure whose history is shown while it is open. */
  past: number | null;
  setPast(measure: number | null): void;
  keys: boolean;
  setKeys(on: boolean): void;
  /** Fingerings asked for. */
  offers: OffersOnStand;
  /** Where the bow lies along its hair. */
  hair: HairOnStand;
  /** How the other sections bow. */
  beside: BesideOnStand;
  /** The passage as it sounds. */
  hearing: HearingOnStand;
  /** Where the figure in hand is played again. */
  elsewhere: ElsewhereOnStand;
  /** Open measures met since the run-through began. */
  run: Run;
  setRun(run: Run): void;
  /** What waits for me here, and what just happened that concerns me. */
  waits: WaitsOnStand;
  /** What has changed on my part since it was handed out. */
  sinceOut: readonly LateChange[];
  notice: NoticeOnStand;
  /** Slip of mine that is being written anew. */
  revising: Proposal | null;
  setRevising(slip: Proposal | null): void;
}

export const isPrincipal = ({ view }: Pick<Desk, 'view'>): boolean => view.roles.includes('principal');
export const mayMark = ({ view }: Pick<Desk, 'view'>): boolean => view.roles.includes('principal') || view.roles.includes('player');

/** The pencils a person has here: who does not sit in the section writes for themselves alone. */
export function pencilsOf(desk: Pick<Desk, 'view'>): readonly Held[] {
  if (!mayMark(desk)) return ['alone'];
  return isPrincipal(desk) ? ['propose', 'alone', 'ink'] : ['propose', 'alone'];
}

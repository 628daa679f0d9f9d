import type { AgreementState } from '../../core/agreement/state.ts';
import { TIMING, type Clock, type Timing } from './clock.ts';
import type { Connection } from './connection.ts';
import { follow } from './follower.ts';

interface Options {
  part: string;
  connection: Connection;
  clock: Clock;
  timing?: Timing;
  /** As it was fetched. */
  state: AgreementState;
  /** Something was written in the part. */
  onState(state: AgreementState): void;
  /** Its music, section or seating was exchanged: fetch it again. */
  onRenewed(): void;
}

/** Follows a part that lies on another stand: reads what is written there as it comes, writes nothing, and tells nobody where one looks. Ends with the returned function. */
export function readAlong({ part, connection, clock, timing = TIMING, state, onState, onRenewed }: Options): () => void {
  const follower = follow({ part, connection, clock, timing, state, onRows: () => onState(follower.state()), onCaughtUp: () => {}, onRefused: () => {}, onAnotherLog: onRenewed });
  const leave = connection.join(part, {
    status(status) {
      if (status === 'live') follower.catchUp();
      else follower.cut();
    },
    message(name, body) {
      if (name === 'logged' && 'entries' in body) follower.took(body.entries);
      else if (name === 'head' && 'seq' in body) follower.headIs(body.seq);
      else if (name === 'renewed') onRenewed();
    },
  });
  follower.catchUp();
  return () => {
    leave();
    follower.cut();
  };
}

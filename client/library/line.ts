import { browserQueue } from '../agreement/browserQueue.ts';
import { systemClock } from '../agreement/clock.ts';
import { connect, type Connection } from '../agreement/connection.ts';
import { socketWire } from '../agreement/socketWire.ts';
import { onLeaving } from './leave.ts';
import { whyAway } from './whyAway.ts';

let open: Connection | null = null;

/** This window's one line to the library, opened when first needed. */
export function libraryLine(): Connection {
  open ??= connect({ openWire: socketWire(), clock: systemClock, askWhy: whyAway });
  return open;
}

// Signed out or in as another: the next part opens a new line.
onLeaving(() => {
  open?.close();
  open = null;
});

export const unsent = browserQueue();

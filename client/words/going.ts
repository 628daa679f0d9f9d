import type { Hindrance } from '../agreement/hindrance.ts';
import { count } from './english.ts';

/** What becomes of what one has written: what keeps it, what one can do, and that it has arrived. */
export const going = {
  what: {
    cut: 'No line to the library; it is being taken up again.',
    offline: 'No line to the library: this device has no network.',
    silent: 'No line to the library: it does not answer, or the network is away.',
    late: 'Not yet written: the library has not answered.',
    slower: 'More at once than the library takes.',
    shelvesAway: 'The library cannot reach its shelves just now.',
    shelvesFull: 'The library’s disk is full: nothing can be written just now.',
    signedOut: 'You are signed out.',
    gone: 'This part is not open to you any more: the programme is over, or your place was given up.',
    another: 'Somebody else has signed in in this browser.',
    oldProgram: 'This page is older than the library.',
  },
  can: {
    cut: 'Mark on; it goes round when the line is back.',
    offline: 'Mark on; it goes round when the line is back.',
    silent: 'Mark on; it goes round when the line is back.',
    late: 'Mark on; it is sent again by itself.',
    slower: 'Mark on; it goes in turn.',
    shelvesAway: 'Mark on; it is sent again by itself.',
    shelvesFull: 'Mark on; it is sent again once there is room. Tell whoever looks after Bowline.',
    signedOut: 'Open a sign-in link in this browser; what waits goes round then.',
    gone: 'Ask the librarian to let you in again; what waits is kept in this browser.',
    another: 'Load the page again; what you wrote is kept for you.',
    oldProgram: 'Load it again; your unsent marks are kept.',
  },
  waits: (n: number) => (n ? `${count(n, 'mark', 'lines')} ${n === 1 ? 'waits' : 'wait'} in your pencil.` : ''),
  notKept: 'This browser keeps nothing: leave the page open.',
  written: 'Written: everything that waited is in the library.',
} satisfies { what: Record<Hindrance, string>; can: Record<Hindrance, string> } & Record<string, unknown>;

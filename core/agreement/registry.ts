import type { z } from 'zod';
import { adopt } from './operations/adopt.ts';
import { bringIn } from './operations/bringIn.ts';
import { castVote } from './operations/castVote.ts';
import { comment } from './operations/comment.ts';
import { lock } from './operations/lock.ts';
import { moveOn } from './operations/moveOn.ts';
import { mute } from './operations/mute.ts';
import { propose } from './operations/propose.ts';
import { resolveComment } from './operations/resolveComment.ts';
import { restore } from './operations/restore.ts';
import { revise } from './operations/revise.ts';
import { setAside } from './operations/setAside.ts';
import { unlock } from './operations/unlock.ts';
import { unmute } from './operations/unmute.ts';
import { withdraw } from './operations/withdraw.ts';

/** Every operation by its name. HTTP routes, the socket message and the browser's prediction come from here. */
export const OPERATIONS = { propose, bringIn, revise, withdraw, castVote, comment, resolveComment, adopt, setAside, restore, mute, unmute, moveOn, lock, unlock } as const;

export type OperationName = keyof typeof OPERATIONS;

/** What a sender writes for an operation; fields with a default may be left out. Example: `OperationInput<'unmute'>` is `{ id: string }`. */
export type OperationInput<Name extends OperationName> = z.input<(typeof OPERATIONS)[Name]['input']>;

/** Example: `isOperationName('adopt')` is true. */
export function isOperationName(name: string): name is OperationName {
  return Object.hasOwn(OPERATIONS, name);
}

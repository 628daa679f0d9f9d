import type { Server, Socket } from 'socket.io';
import type { CLIENT_MESSAGES, FollowAnswer, HelloAnswer, ServerMessages, SubmitAnswer } from '../../core/agreement/wire/socket.ts';
import type { Draining } from '../http/draining.ts';
import type { LiveSession } from '../store/door.ts';
import type { Present } from './presence.ts';

type Answers = { hello: HelloAnswer; follow: FollowAnswer; submit: SubmitAnswer; unfollow: { ok: true }; looking: { ok: true } };
type Listens = { [Name in keyof typeof CLIENT_MESSAGES]: (message: unknown, answer?: (answer: Answers[Name]) => void) => void };
type Sends = { [Name in keyof ServerMessages]: (message: ServerMessages[Name]) => void };
/** From server to server. */
interface Between {
  lookingElsewhere(server: string, part: string, people: Present[]): void;
  renewedElsewhere(parts: string[]): void;
  leftElsewhere(person: string): void;
}
interface Data {
  session: LiveSession;
  /** Follows a part no more. */
  drop?: (part: string) => void;
}

export type LiveServer = Server<Listens, Sends, Between, Data>;
export type LiveSocket = Socket<Listens, Sends, Between, Data>;

/** What the live face shares with the other. */
export interface LiveTools {
  draining: Draining;
  /** Whether a person may say one thing more, over all their connections. */
  mayTalk(person: string): boolean;
}

import type { z } from 'zod';
import type { CLIENT_MESSAGES, FollowAnswer, HelloAnswer, ServerMessages, SubmitAnswer } from '../../core/agreement/wire/socket.ts';

export type MessageName = keyof typeof CLIENT_MESSAGES;
export type MessageBody<Name extends MessageName> = z.infer<(typeof CLIENT_MESSAGES)[Name]>;

export interface Answers {
  hello: HelloAnswer;
  follow: FollowAnswer;
  submit: SubmitAnswer;
}

/** What a wire tells the one who opened it. It opens itself again after a cut. */
export interface WireListener {
  up(): void;
  down(): void;
  message<Name extends keyof ServerMessages>(name: Name, body: ServerMessages[Name]): void;
}

/** A two-way line to the server that may be cut at any time. */
export interface Wire {
  /** The answer, or a rejection when the line is cut or nothing came within `ms`: then it is not known whether the message arrived. */
  ask<Name extends keyof Answers>(name: Name, body: MessageBody<Name>, ms: number): Promise<Answers[Name]>;
  tell<Name extends MessageName>(name: Name, body: MessageBody<Name>): void;
  close(): void;
}

export type OpenWire = (listener: WireListener) => Wire;

import { PROTOCOL, type ServerMessages } from '../../core/agreement/wire/socket.ts';
import { pauseBefore, TIMING, type Clock, type Timing } from './clock.ts';
import type { Hindrance } from './hindrance.ts';
import type { Answers, MessageBody, MessageName, OpenWire } from './wire.ts';

/** away: cut off, marks wait in the pencil. oldProgram: this page must be loaded again; nothing is sent any more. */
export type ConnectionStatus = 'connecting' | 'live' | 'away' | 'oldProgram';

/** What one follower of one part hears. */
export interface PartListener {
  status(status: ConnectionStatus): void;
  message<Name extends keyof ServerMessages>(name: Name, body: ServerMessages[Name]): void;
}

export interface Connection {
  status(): ConnectionStatus;
  /** Why nothing goes round, where nothing does. */
  hindrance(): Hindrance | null;
  /** As whom the server has the line open, where it has said so. */
  person(): string | null;
  /** Hear of one part until the returned function is called. */
  join(part: string, listener: PartListener): () => void;
  /** For status lines outside a part. */
  subscribe(changed: () => void): () => void;
  ask<Name extends keyof Answers>(name: Name, body: MessageBody<Name>): Promise<Answers[Name]>;
  tell<Name extends MessageName>(name: Name, body: MessageBody<Name>): void;
  /** This page is too old, or not for whoever is signed in now: stop sending. */
  outdated(why?: 'oldProgram' | 'another'): void;
  close(): void;
}

interface Options {
  openWire: OpenWire;
  clock: Clock;
  timing?: Timing;
  protocol?: number;
  /** Finds out on another way why there is no line; asked at each knock. */
  askWhy?(): Promise<Hindrance>;
}

/** One line to the server for all parts a person has open: says hello after every cut and passes messages on. */
export function connect({ openWire, clock, timing = TIMING, protocol = PROTOCOL, askWhy }: Options): Connection {
  const parts = new Map<string, Set<PartListener>>();
  const watchers = new Set<() => void>();
  let status: ConnectionStatus = 'connecting';
  let meeting = 0;
  let cancel = () => {};
  let why: Hindrance | null = null;
  let asking = false;
  let person: string | null = null;

  const tellAll = () => {
    for (const listeners of parts.values()) for (const listener of [...listeners]) listener.status(status);
    for (const watcher of [...watchers]) watcher();
  };
  const become = (next: ConnectionStatus) => {
    if (status === next || status === 'oldProgram') return;
    status = next;
    if (next !== 'oldProgram') why = next === 'away' ? 'cut' : null;
    tellAll();
  };

  const findOut = async (): Promise<void> => {
    if (!askWhy || asking) return;
    asking = true;
    const found = await askWhy().catch(() => null);
    asking = false;
    if (status !== 'away' || found === null || found === why) return;
    why = found;
    tellAll();
  };

  const outdated = (because: 'oldProgram' | 'another' = 'oldProgram') => {
    if (status !== 'oldProgram') why = because;
    become('oldProgram');
    meeting += 1;
    cancel();
    wire.close();
  };

  const greet = async (mine: number, attempt: number): Promise<void> => {
    const answer = await wire.ask('hello', { protocol }, timing.answer).catch(() => null);
    if (mine !== meeting) return;
    if (answer?.ok) {
      person = answer.person ?? null;
      become('live');
    }
    else if (answer && 'refusal' in answer && answer.refusal.code === 'OLD_PROGRAM') outdated();
    else cancel = clock.after(pauseBefore(attempt, timing), () => void greet(mine, attempt + 1));
  };

  const wire = openWire({
    up() {
      meeting += 1;
      cancel();
      // A wire may come up before `openWire` has returned it.
      void Promise.resolve(meeting).then((mine) => (mine === meeting ? greet(mine, 0) : undefined));
    },
    down() {
      meeting += 1;
      cancel();
      become('away');
      void findOut();
    },
    message(name, body) {
      if (status !== 'live') return;
      for (const listener of [...(parts.get(body.part) ?? [])]) listener.message(name, body);
    },
  });

  return {
    status: () => status,
    hindrance: () => why,
    person: () => person,
    join(part, listener) {
      const listeners = parts.get(part) ?? new Set();
      parts.set(part, listeners.add(listener));
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0 || parts.get(part) !== listeners) return;
        parts.delete(part);
        wire.tell('unfollow', { part });
      };
    },
    subscribe(changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    ask: (name, body) => (status === 'live' ? wire.ask(name, body, timing.answer) : Promise.reject(new Error('Not connected.'))),
    tell: (name, body) => (status === 'live' ? wire.tell(name, body) : undefined),
    outdated,
    close() {
      meeting += 1;
      cancel();
      wire.close();
    },
  };
}

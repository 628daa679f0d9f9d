import type { z } from 'zod';
import { refused } from '../../core/agreement/refusal.ts';
import { placeIn } from '../../core/agreement/seating.ts';
import { CLIENT_MESSAGES, PROTOCOL, type FollowAnswer, type HelloAnswer, type Refused, type SubmitAnswer } from '../../core/agreement/wire/socket.ts';
import type { Hall } from '../halls.ts';
import { isTooDeep } from '../http/depth.ts';
import type { Deps } from '../http/deps.ts';
import { awayFor } from '../http/errors.ts';
import { incidentName } from '../http/incident.ts';
import { isUnavailable } from '../store/unavailable.ts';
import type { Fields } from '../watch/daybook.ts';
import { createBucket } from './bucket.ts';
import type { Followed } from './followed.ts';
import type { Presence } from './presence.ts';
import { partRoom } from './rooms.ts';
import type { LiveSocket, LiveTools } from './types.ts';

const ROWS_AT_ONCE = 500;
const MESSAGES = { burst: 400, perSecond: 60 };
const PARTS_AT_ONCE = 40;
const SLOWER: SubmitAnswer = { ok: false, retry: true, by: 'TOO_FAST', text: 'Too many lines at once; they are sent again by themselves.' };
const NOT_READ = refused('BAD_INPUT', { detail: 'the library could not read the message. Load the page again.' });

const NO_PART: Refused = { ...refused('BAD_INPUT', { detail: 'the library has no such part. Go back to the shelf.' }), gone: true };

type Messages = typeof CLIENT_MESSAGES;
type Input<Name extends keyof Messages> = z.infer<Messages[Name]>;

/** What a message is about, for the log. */
function namedIn(message: object): Fields {
  const { part, operation } = message as { part?: string; operation?: string };
  return { part, operation };
}

/** What one connection may say, and what it is answered. */
export function converse(socket: LiveSocket, deps: Deps, presence: Presence, followed: Followed, { draining, mayTalk }: LiveTools): void {
  const { session } = socket.data;
  const allowed = createBucket(MESSAGES.burst, MESSAGES.perSecond);
  const seats = new Map<string, string | null>();
  const halls = new Map<string, Hall>();
  let greeted = false;

  /** Reads a message, or answers why not. A page of another age is never misread: nothing is read before the greeting. */
  function on<Name extends keyof Messages, Answer>(name: Name, tooMuch: Answer | null, act: (input: Input<Name>) => Promise<Answer>): void {
    const listen = socket.on.bind(socket) as (event: string, listener: (message: unknown, answer?: unknown) => void) => void;
    listen(name, (message, callback) => {
      const answer = typeof callback === 'function' ? (callback as (answer: unknown) => void) : () => {};
      if (!allowed() || !mayTalk(session.person.id)) return tooMuch === null ? undefined : answer(tooMuch);
      if (!greeted && name !== 'hello') return answer(refused('OLD_PROGRAM'));
      const read = isTooDeep(message) ? null : CLIENT_MESSAGES[name].safeParse(message);
      if (!read?.success) return answer(NOT_READ);
      draining.underWay(act(read.data as Input<Name>).then(answer, (reason: unknown) => answer(broken(name, reason, namedIn(read.data)))));
    });
  }

  function broken(name: string, reason: unknown, about: Fields): SubmitAnswer {
    if (isUnavailable(reason)) {
      const { code, text } = awayFor(reason);
      return { ok: false, retry: true, by: code, text };
    }
    const incident = incidentName();
    deps.log(`Fault "${incident}" at socket message ${name}`, reason, { incident, ...about });
    return refused('BAD_INPUT', { detail: `something broke in the library, and it is not your doing. Tell whoever looks after Bowline this name: ${incident}.` });
  }

  on('hello', null, async ({ protocol }): Promise<HelloAnswer> => {
    greeted = protocol === PROTOCOL;
    return greeted ? { ok: true, person: session.person.id } : refused('OLD_PROGRAM');
  });

  on('follow', null, async ({ part, after }): Promise<FollowAnswer> => {
    if (!socket.rooms.has(partRoom(part)) && seats.size >= PARTS_AT_ONCE) return NOT_READ;
    const hall = await followed.open(session, part);
    if (!hall) return NO_PART;
    halls.set(part, hall);
    // Joined before reading: a row written in between arrives twice rather than never.
    await socket.join(partRoom(part));
    const view = await hall.store.log.entries(part, after, ROWS_AT_ONCE);
    if (!view) {
      await socket.leave(partRoom(part));
      return NO_PART;
    }
    if (!seats.has(part)) seats.set(part, await seatIn(hall, part));
    presence.tell(part);
    return { ok: true, ...view };
  });

  on('unfollow', null, async ({ part }) => {
    leave(part);
    await socket.leave(partRoom(part));
    return { ok: true };
  });

  on('submit', SLOWER, async ({ part, operation, name, input }): Promise<SubmitAnswer> => {
    const hall = halls.get(part) ?? (await followed.open(session, part));
    const answer = await hall?.authority.submit(part, { request: { operation, name, input }, asker: { person: session.person.id, session: session.id } });
    if (!answer) return NO_PART;
    if (answer.ok) return answer;
    if ('refusal' in answer) {
      if (answer.refusal.code !== 'NOT_YOUR_ROLE' || (await followed.open(session, part))) return answer;
      // Their programme is over or their place was given up since they began to follow: they hear no more of it.
      leave(part);
      await socket.leave(partRoom(part));
      return NO_PART;
    }
    if ('fault' in answer) throw answer.fault;
    // Signed out since connecting: nothing is decided about the operation; it waits on the page until somebody signs in.
    socket.disconnect(true);
    return { ok: false, retry: true, by: 'SIGNED_OUT', text: 'You are not signed in any more. Open a sign-in link; your lines are kept until then.' };
  });

  on('looking', null, async ({ part, measure }) => {
    if (!socket.rooms.has(partRoom(part))) return { ok: true };
    if (measure === null) presence.leave(part, socket.id);
    else presence.look(part, socket.id, { id: session.person.id, name: session.person.name, seat: seats.get(part) ?? null, measure });
    return { ok: true };
  });

  function leave(part: string): void {
    presence.leave(part, socket.id);
    seats.delete(part);
    halls.delete(part);
  }

  async function seatIn({ store }: Hall, part: string): Promise<string | null> {
    const section = await store.sections.ofPart(part);
    return section && (placeIn(section, session.person.id)?.seat ?? null);
  }

  socket.data.drop = (part) => {
    leave(part);
    void socket.leave(partRoom(part));
  };
  socket.on('disconnecting', () => [...seats.keys()].forEach(leave));
}

import { setTimeout as wait } from 'node:timers/promises';
import { createAdapter } from '@socket.io/redis-streams-adapter';
import type { Redis } from 'ioredis';
import type { ServerOptions } from 'socket.io';
import type { SharedRedis } from './openRedis.ts';

type MakeAdapter = ReturnType<typeof createAdapter>;

/** Hints kept for a server that was cut off from Redis for a moment. Chosen, not measured: what is older, the heartbeat brings. */
const KEPT = 1000;
const PAUSE = 500;

/**
 * Broadcasts of Socket.IO to the other servers, by a stream in Redis. Hints only: they are sent and forgotten, those of this server's own
 * followers do not wait for Redis, and while it is away nothing piles up.
 */
export function hintsThrough(redis: SharedRedis): NonNullable<ServerOptions['adapter']> {
  const client = {
    options: {},
    duplicate: () => patient(redis.listener()),
    xadd: (args: Parameters<Redis['xadd']>) => redis.commands.xadd(...args),
    publish: (channel: string, message: Buffer) => redis.commands.publish(channel, message).catch(() => 0),
  };
  const make: MakeAdapter = createAdapter(client, { streamName: 'bowline:hints', channelPrefix: 'bowline', maxLen: KEPT, blockTimeInMs: 1000, onlyPlaintext: true });
  // Socket.IO calls it with `new`, which an arrow does not take.
  return function adapterOf(namespace: Parameters<MakeAdapter>[0]) {
    const adapter = make(namespace);
    const publish = adapter.doPublish.bind(adapter);
    adapter.doPublish = (message) => {
      (publish(message) as Promise<unknown>).catch(() => {});
      return Promise.resolve('');
    };
    return adapter;
  };
}

/** The adapter reads again at once when reading fails, and does not look at what subscribing comes to; so both are told to wait. */
function patient(listener: Redis): Redis {
  const read = listener.xread.bind(listener) as (...args: unknown[]) => Promise<unknown>;
  const subscribe = listener.subscribe.bind(listener) as (...channels: string[]) => Promise<unknown>;
  return Object.assign(listener, {
    xread: (...args: unknown[]) =>
      read(...args).catch(async (reason: unknown) => {
        await wait(PAUSE);
        throw reason;
      }),
    subscribe: (channels: string[]) => subscribe(...channels).catch(() => 0),
  });
}

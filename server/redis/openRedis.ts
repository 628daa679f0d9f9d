import { Redis, type RedisOptions } from 'ioredis';

/** Redis, shared by the servers of one library. It may be away at any time: nothing that counts is kept in it. */
export interface SharedRedis {
  /** For questions that are answered at once or not at all. */
  commands: Redis;
  /** A connection that waits: for what it listens to, and for Redis to come back. */
  listener(): Redis;
  up(): boolean;
  close(): void;
}

const PATIENT: RedisOptions = {
  connectTimeout: 2000,
  keepAlive: 5000,
  retryStrategy: (attempt) => Math.min(2000, 50 * 2 ** Math.min(attempt, 6)),
  // A Redis that hangs is one that is away.
  socketTimeout: 5000,
};
/** How long a question may take. Chosen, not measured. */
const AT_ONCE: RedisOptions = { ...PATIENT, commandTimeout: 500, enableOfflineQueue: false, autoResendUnfulfilledCommands: false, maxRetriesPerRequest: 0 };
const WAITING: RedisOptions = { ...PATIENT, enableOfflineQueue: true, maxRetriesPerRequest: null };

export function openRedis(url: string, report: (line: string) => void): SharedRedis {
  const listeners: Redis[] = [];
  const commands = quiet(new Redis(url, AT_ONCE));
  let told: boolean | null = null;
  let closed = false;

  /** Said once each way, not at every attempt. */
  function tell(up: boolean): void {
    if (closed || told === up) return;
    if (up && told === false) report('Redis is back.');
    if (!up) report('Redis is away; this server goes on without it and asks again by itself.');
    told = up;
  }
  commands.on('ready', () => tell(true));
  commands.on('close', () => tell(false));

  return {
    commands,
    listener() {
      const listener = quiet(new Redis(url, WAITING));
      listeners.push(listener);
      return listener;
    },
    up: () => commands.status === 'ready',
    close() {
      closed = true;
      for (const one of [commands, ...listeners]) one.disconnect();
    },
  };
}

/** Every failed attempt is an event, and one that nobody hears ends the process; what it means is told by `up`. */
function quiet(redis: Redis): Redis {
  return redis.on('error', () => {});
}

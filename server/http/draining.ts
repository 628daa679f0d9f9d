import type { FastifyInstance, FastifyRequest } from 'fastify';

/** A server on its way out: it says so first, then takes nobody in, ends what is under way, and only then lets its lines go. */
export interface Draining {
  /** Said to whoever asks whether people may be sent here. */
  readonly begun: boolean;
  /** No new line is taken up. */
  readonly leaving: boolean;
  begin(): void;
  /** Counted until it has ended. */
  underWay(work: Promise<unknown>): void;
  /** Run when nothing is under way any more. */
  add(step: () => void): void;
  /** Closes the door of the server; resolves when everything has ended, or after `longest` milliseconds. */
  leave(door: { close(): unknown }, longest: number): Promise<void>;
}

export function createDraining(): Draining {
  const steps: (() => void)[] = [];
  const work = new Set<Promise<unknown>>();
  let begun = false;
  let leaving = false;

  async function quiet(): Promise<void> {
    while (work.size) await Promise.allSettled([...work]);
  }

  return {
    get begun() {
      return begun;
    },
    get leaving() {
      return leaving;
    },
    begin: () => void (begun = true),
    underWay(one) {
      const counted = one.then(() => {}, () => {}).finally(() => work.delete(counted));
      work.add(counted);
    },
    add: (step) => void steps.push(step),
    async leave(door, longest) {
      begun = true;
      leaving = true;
      door.close();
      let timer: NodeJS.Timeout | undefined;
      await Promise.race([quiet(), new Promise((resolve) => (timer = setTimeout(resolve, longest)))]);
      clearTimeout(timer);
      steps.forEach((step) => step());
    },
  };
}

/** Requests under way hold a leaving server back; their connections end with their answers. */
export function countRequests(app: FastifyInstance, draining: Draining): void {
  const ends = new WeakMap<FastifyRequest, () => void>();
  const end = async (request: FastifyRequest) => ends.get(request)?.();
  app.addHook('onRequest', async (request, reply) => {
    draining.underWay(new Promise<void>((resolve) => ends.set(request, resolve)));
    if (draining.begun) void reply.header('connection', 'close');
  });
  app.addHook('onResponse', end);
  app.addHook('onRequestAbort', end);
}

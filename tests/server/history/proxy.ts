import { connect, createServer, type AddressInfo, type NetConnectOpts, type Socket } from 'node:net';

/** Stands between clients and server and does to their connections what a bad network does. */
export interface Proxy {
  port: number;
  counts: { connections: number; cuts: number; swallowed: number; delayed: number };
  /** Cuts every connection there is. */
  cutAll(): void;
  /** Cuts one connection, the nth of those there are. */
  cutOne(n: number): void;
  /** From now on what the server says is swallowed on the connections there are; they are cut after `ms`: answers are lost for sure. */
  swallow(ms: number): void;
  /** Delays every piece by this many milliseconds; 0 for none. */
  delay(ms: number): void;
  /** No new connections while true. */
  refuse(closed: boolean): void;
  close(): Promise<void>;
}

interface Pair {
  client: Socket;
  server: Socket;
  mute: boolean;
}

/** Where a new connection goes: the first of these that takes it. */
export type Targets = () => NetConnectOpts[];

export async function openProxy(target: number | Targets): Promise<Proxy> {
  const targets: Targets = typeof target === 'number' ? () => [{ port: target, host: '127.0.0.1' }] : target;
  const pairs = new Set<Pair>();
  const counts = { connections: 0, cuts: 0, swallowed: 0, delayed: 0 };
  let pause = 0;
  let closed = false;

  const end = (pair: Pair) => {
    pairs.delete(pair);
    pair.client.destroy();
    pair.server.destroy();
  };
  const cut = (pair: Pair) => {
    counts.cuts += 1;
    end(pair);
  };

  const listener = createServer({ pauseOnConnect: true }, (client) => {
    client.on('error', () => client.destroy());
    if (closed) return client.destroy();
    counts.connections += 1;
    void reach(targets()).then((server) => (server ? join(client, server) : client.destroy()));
  });

  function join(client: Socket, server: Socket): void {
    const pair: Pair = { client, server, mute: false };
    pairs.add(pair);
    const pass = (to: Socket, muted: () => boolean) => {
      // One chain a direction, so that a delay never changes the order of bytes.
      let chain = Promise.resolve();
      return (piece: Buffer) => {
        if (muted()) return void (counts.swallowed += 1);
        const wait = pause;
        if (wait) counts.delayed += 1;
        chain = chain.then(() => (wait ? new Promise((resolve) => setTimeout(resolve, wait)) : undefined)).then(() => void (to.destroyed || to.write(piece)));
      };
    };
    client.on('data', pass(pair.server, () => false));
    pair.server.on('data', pass(client, () => pair.mute));
    for (const socket of [client, pair.server]) socket.on('error', () => end(pair)).on('close', () => end(pair));
    if (client.destroyed || server.destroyed) end(pair);
    client.resume();
  }
  await new Promise<void>((resolve) => listener.listen(0, '127.0.0.1', resolve));

  return {
    port: (listener.address() as AddressInfo).port,
    counts,
    cutAll: () => [...pairs].forEach(cut),
    cutOne(n) {
      const all = [...pairs];
      if (all.length) cut(all[n % all.length]!);
    },
    swallow(ms) {
      const muted = [...pairs];
      muted.forEach((pair) => (pair.mute = true));
      setTimeout(() => muted.filter((pair) => pairs.has(pair)).forEach(cut), ms);
    },
    delay: (ms) => void (pause = ms),
    refuse: (shut) => void (closed = shut),
    async close() {
      [...pairs].forEach(end);
      await new Promise((resolve) => listener.close(resolve));
    },
  };
}

async function reach(targets: NetConnectOpts[]): Promise<Socket | null> {
  for (const target of targets) {
    const socket = connect(target);
    const taken = await new Promise<boolean>((resolve) => socket.once('connect', () => resolve(true)).once('error', () => resolve(false)));
    if (taken) return socket;
    socket.destroy();
  }
  return null;
}

import type { AddressInfo } from 'node:net';
import { WebSocketServer } from 'ws';
import { answering, clock, heldBytes } from '../child.ts';

export type BareAsked = 'open' | { send: string } | 'memory';

let server: WebSocketServer | undefined;

/** A server that sends what it is given to everybody, and nothing else; it answers greetings as ours does, so that one program listens to both. */
answering<BareAsked>(async (asked) => {
  if (asked === 'memory') return { bytes: await heldBytes() };
  if (asked === 'open') {
    server = new WebSocketServer({ host: '127.0.0.1', port: 0, perMessageDeflate: false });
    server.on('connection', (socket) => {
      socket.send('0{"sid":"bare","upgrades":[],"pingInterval":10000,"pingTimeout":10000,"maxPayload":1048576}');
      socket.on('message', (data: Buffer) => {
        const said = data.toString();
        if (said === '40') socket.send('40{"sid":"bare"}');
        else if (said.startsWith('42')) socket.send(`43${/^42(\d+)/.exec(said)![1]}[{"ok":true}]`);
      });
    });
    await new Promise((resolve) => server!.once('listening', resolve));
    return { port: (server.address() as AddressInfo).port };
  }
  const at = clock();
  for (const client of server!.clients) client.send(asked.send);
  return { at };
});

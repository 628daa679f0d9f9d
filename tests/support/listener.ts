import { io, type Socket } from 'socket.io-client';
import type { LogEntry } from '../../core/agreement/event.ts';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';

/** Somebody on the live line, and everything they heard. */
export interface Listener {
  socket: Socket;
  heard: { logged: LogEntry[]; head: number[]; present: { name: string; measure: number | null }[][]; renewed: number };
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads into whatever came
  ask(name: string, body: unknown): Promise<any>;
}

/** Connects to a server with a cookie and follows a part from its beginning. */
export async function listenTo(address: string, cookie: string, part: string, more: { reconnection?: boolean } = {}): Promise<Listener> {
  const socket = io(address, { path: '/socket', transports: ['websocket'], forceNew: true, reconnection: more.reconnection ?? false, extraHeaders: { cookie } });
  const heard: Listener['heard'] = { logged: [], head: [], present: [], renewed: 0 };
  socket.on('logged', ({ entries }) => heard.logged.push(...entries));
  socket.on('head', ({ seq }) => heard.head.push(seq));
  socket.on('present', ({ people }) => heard.present.push(people));
  socket.on('renewed', () => (heard.renewed += 1));
  const ask: Listener['ask'] = (name, body) => socket.timeout(10_000).emitWithAck(name, body);
  await ask('hello', { protocol: PROTOCOL });
  await ask('follow', { part, after: 0 });
  return { socket, heard, ask };
}

export const until = async (holds: () => boolean | Promise<boolean>): Promise<void> => {
  while (!(await holds())) await new Promise((resolve) => setTimeout(resolve, 20));
};

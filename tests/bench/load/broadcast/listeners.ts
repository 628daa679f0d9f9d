import { WebSocket } from 'ws';
import { PROTOCOL } from '../../../../core/agreement/wire/socket.ts';
import { answering, clock } from '../child.ts';

export type ListenersAsked = { connect: { name: string; port: number; count: number; part: string; cookies: string[] } } | { await: string } | { close: true };
export interface Heard {
  times: number[];
  lost: number;
  /** One of the texts as it came over the line. */
  text: string;
}

/** Opening at once: more would only wait in the server's queue. Chosen, not measured. */
const AT_ONCE = 40;
const PATIENCE = 20_000;

interface Group {
  sockets: WebSocket[];
  times: number[];
  text: string;
  all: () => void;
}

const groups = new Map<string, Group>();

/** One listener of a part by the words of the live face themselves, so that reading them costs as little as can be: greets, follows, notes when a row comes. */
function listen(group: Group, port: number, part: string, cookie: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const socket = new WebSocket(`ws://127.0.0.1:${port}/socket/?EIO=4&transport=websocket`, { headers: { cookie }, perMessageDeflate: false });
    socket.on('error', reject);
    socket.on('message', (data: Buffer) => {
      const time = clock();
      const said = data.toString();
      if (said.startsWith('42["logged"')) {
        group.times.push(time);
        group.text = said;
        if (group.times.length === group.sockets.length) group.all();
      } else if (said === '2') socket.send('3');
      else if (said.startsWith('0{')) socket.send('40');
      else if (said.startsWith('40')) socket.send(`420["hello",{"protocol":${PROTOCOL}}]`);
      else if (said.startsWith('430')) socket.send(`421["follow",{"part":"${part}","after":0}]`);
      else if (said.startsWith('431')) {
        if (!said.includes('"ok":true')) reject(new Error(said));
        group.sockets.push(socket);
        resolve();
      }
    });
  });
}

async function connect({ name, port, count, part, cookies }: Extract<ListenersAsked, { connect: unknown }>['connect']): Promise<void> {
  const group = groups.get(name) ?? { sockets: [], times: [], text: '', all: () => {} };
  groups.set(name, group);
  while (group.sockets.length < count) {
    const more = Math.min(AT_ONCE, count - group.sockets.length);
    await Promise.all(Array.from({ length: more }, (_, n) => listen(group, port, part, cookies[(group.sockets.length + n) % cookies.length]!)));
  }
  group.times = [];
}

/** What has come by now or comes until everybody has it. */
async function heard(name: string): Promise<Heard> {
  const group = groups.get(name)!;
  if (group.times.length < group.sockets.length) {
    await new Promise<void>((resolve) => {
      const late = setTimeout(resolve, PATIENCE);
      group.all = () => {
        clearTimeout(late);
        resolve();
      };
    });
  }
  const { times, text, sockets } = group;
  group.times = [];
  return { times, text, lost: sockets.length - times.length };
}

answering<ListenersAsked>(async (asked) => {
  if ('connect' in asked) return connect(asked.connect);
  if ('await' in asked) return heard(asked.await);
  process.exit();
});

import { io } from 'socket.io-client';
import type { ServerMessages } from '../../core/agreement/wire/socket.ts';
import type { Answers, OpenWire } from './wire.ts';

const FROM_SERVER = ['logged', 'head', 'present', 'renewed'] as const satisfies readonly (keyof ServerMessages)[];
const KNOCK_AGAIN = 2_000;

/**
 * The wire over Socket.IO. `address`: origin of the server, absent in a browser (its own). `headers`: for clients outside a browser, which
 * bring their cookie themselves.
 */
export function socketWire({ address, headers }: { address?: string; headers?: Record<string, string> } = {}): OpenWire {
  return (listener) => {
    const options = { path: '/socket', transports: ['websocket'], reconnectionDelay: 300, reconnectionDelayMax: 5_000, forceNew: true, ...(headers ? { extraHeaders: headers } : {}) };
    const socket = address === undefined ? io(options) : io(address, options);
    let knock: ReturnType<typeof setTimeout> | undefined;
    const down = () => {
      listener.down();
      // When the server itself hangs up, the library does not come back by itself.
      clearTimeout(knock);
      if (!socket.active) knock = setTimeout(() => socket.connect(), KNOCK_AGAIN);
    };
    socket.on('connect', () => listener.up());
    socket.on('disconnect', down);
    socket.on('connect_error', down);
    const pass = <Name extends keyof ServerMessages>(name: Name) => socket.on(name as string, (body: ServerMessages[Name]) => listener.message(name, body));
    FROM_SERVER.forEach((name) => pass(name));
    return {
      ask(name, body, ms) {
        if (!socket.connected) return Promise.reject(new Error('The line is cut.'));
        return socket.timeout(ms).emitWithAck(name, body) as Promise<Answers[typeof name]>;
      },
      tell(name, body) {
        if (socket.connected) socket.emit(name, body);
      },
      close() {
        socket.off();
        clearTimeout(knock);
        socket.disconnect();
      },
    };
  };
}

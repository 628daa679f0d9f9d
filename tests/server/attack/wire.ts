import { connect, type Socket } from 'node:net';

/** A line to the server with nothing between: what is written goes out as it is. */
export interface Wire {
  socket: Socket;
  write(bytes: string | Uint8Array): void;
  /** All that was answered when the server cut the line. */
  cut: Promise<string>;
  drop(): void;
}

export async function wire(port: number): Promise<Wire> {
  const socket = connect(port, '127.0.0.1');
  const chunks: Buffer[] = [];
  socket.on('data', (chunk: Buffer) => chunks.push(chunk));
  const cut = new Promise<string>((resolve) => socket.once('close', () => resolve(Buffer.concat(chunks).toString('latin1'))));
  await new Promise<void>((resolve, reject) => socket.once('connect', resolve).once('error', reject));
  // From here on a line that is cut is what is looked for.
  socket.removeAllListeners('error').on('error', () => {});
  return { socket, write: (bytes) => void socket.write(bytes), cut, drop: () => socket.destroy() };
}

/** What is answered to bytes that are written at once, up to the end of the line. */
export async function shout(port: number, bytes: string | Uint8Array): Promise<string> {
  const line = await wire(port);
  line.write(bytes);
  return line.cut;
}

export const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);
/** The body of the last answer on a line, as JSON. */
export const saidIn = (answer: string): { code?: string; text?: string } => JSON.parse(answer.slice(answer.lastIndexOf('\r\n\r\n') + 4) || '{}') as { code?: string; text?: string };

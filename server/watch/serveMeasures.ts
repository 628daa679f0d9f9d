import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Unstartable } from '../database/unstartable.ts';
import type { Measures } from './measures.ts';

/** A door of its own for the numbers, so that whoever reaches the library does not reach them. */
export async function serveMeasures(measures: Measures, { host, port }: { host: string; port: number }): Promise<{ port: number; close(): void }> {
  const server = createServer((request, reply) => {
    if (request.method !== 'GET' || request.url !== '/metrics') return void reply.writeHead(404).end();
    measures.text().then(
      (text) => reply.writeHead(200, { 'content-type': measures.contentType }).end(text),
      () => reply.writeHead(500).end(),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (reason: NodeJS.ErrnoException) => reject(new Unstartable(`METRICS_PORT=${port} cannot be opened on ${host} (${reason.code}). Choose another port, or leave it out: then there are no numbers.`)));
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

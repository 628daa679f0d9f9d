import type { FastifyInstance } from 'fastify';
import { Unstartable } from './database/unstartable.ts';

/** Opens the port and returns its number (a free one for 0), or says why it cannot be had. */
export async function listen(app: FastifyInstance, host: string, port: number): Promise<number> {
  try {
    await app.listen({ host, port });
  } catch (reason) {
    const { code } = reason as NodeJS.ErrnoException;
    if (code === 'EADDRINUSE') throw new Unstartable(`Port ${port} is taken by another program. Stop that one, or choose another port: PORT=${port + 1} npm start`);
    if (code === 'EACCES') throw new Unstartable(`Port ${port} may not be opened by this user. Choose one above 1023: PORT=4640 npm start`);
    if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND') throw new Unstartable(`HOST=${host} is no address of this machine. Use 127.0.0.1 for this computer alone or 0.0.0.0 for the house network.`);
    throw reason;
  }
  const address = app.server.address();
  return typeof address === 'object' && address ? address.port : port;
}

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { notFound } from './trouble.ts';

const FOLDER = join(import.meta.dirname, '../../dist/client');

/** The screens: hashed files for a year, the page itself asked for anew each time, any other address the page as well. */
export async function serveClient(app: FastifyInstance, folder = FOLDER): Promise<void> {
  const built = existsSync(join(folder, 'index.html'));
  if (built) {
    await app.register(fastifyStatic, {
      root: folder,
      cacheControl: false,
      setHeaders: (reply, path) => void reply.header('cache-control', path.includes(`${join(folder, 'assets')}`) ? 'public, max-age=31536000, immutable' : 'no-cache'),
    });
  }
  app.setNotFoundHandler((request, reply) => {
    const page = built && (request.method === 'GET' || request.method === 'HEAD') && !/^\/(api|socket|assets)\b/.test(request.url);
    if (!page) throw notFound('page');
    return reply.sendFile('index.html');
  });
}

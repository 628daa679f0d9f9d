import { freePort } from '../serverProcess.ts';
import { createMember, type Member } from './child.ts';
import { program } from './programs.ts';

const HOST = '127.0.0.1';

/** A Redis of its own that keeps nothing: begun again it is empty. */
export async function createRedis(folder: string): Promise<Member> {
  const port = await freePort();
  const args = ['--port', String(port), '--bind', HOST, '--save', '', '--appendonly', 'no', '--dir', folder];
  return createMember({ name: 'redis', address: `redis://${HOST}:${port}`, command: program('redis-server'), args, env: {}, ready: (lines) => lines.some((line) => line.includes('Ready to accept connections')) });
}

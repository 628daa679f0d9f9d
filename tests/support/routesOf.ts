import type { FastifyInstance } from 'fastify';

/** Names of parameters differ between the framework and a description; places do not. */
export const shape = (path: string): string => path.replace(/\{\w+\}|:\w+/g, '*');

/** Every route under /api that the app has, as "get /api/parts/*", from the framework's own list. */
export function routesOf(app: FastifyInstance): string[] {
  const routes = app.printRoutes({ commonPrefix: false, includeHooks: false });
  const methods: string[] = [];
  const stack: string[] = [];
  for (const line of routes.split('\n').filter(Boolean)) {
    const depth = line.search(/[^\s│├└─]/) / 4 - 1;
    const [, piece = '', verbs] = /^[\s│├└─]*(\S+)(?: \(([A-Z, ]+)\))?/.exec(line) ?? [];
    stack.length = depth;
    stack[depth] = piece;
    for (const verb of verbs?.split(', ') ?? []) methods.push(`${verb.toLowerCase()} ${shape(stack.join(''))}`);
  }
  return methods.filter((route) => route.includes(' /api/') && !route.startsWith('head'));
}

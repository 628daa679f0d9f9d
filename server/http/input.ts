import type { FastifyInstance } from 'fastify';
import { z } from 'zod';
import { isTooDeep } from './depth.ts';
import { trouble } from './trouble.ts';

/** The value in the form the schema asks for, or an answer that names the field and what is wrong with it. */
export function read<S extends z.ZodType>(schema: S, value: unknown): z.infer<S> {
  const result = schema.safeParse(value);
  if (result.success) return result.data;
  const issue = result.error.issues[0];
  const field = issue?.path.join('.') ?? '';
  throw trouble(400, 'BAD_INPUT', `Nothing was changed: ${field ? `"${field}"` : 'what was sent'} does not fit (${issue?.message ?? 'unknown form'}). Put that right and send it again.`);
}

/** A person or section is called by something that can be printed. */
export const printable = (text: string): boolean => !/\p{Cc}|\p{Cs}/u.test(text);

const Id = z.object({ id: z.string().max(64).refine(printable) });
export const idOf = (params: unknown): string => read(Id, params).id;

/** JSON as the framework reads it, which refuses keys that reach an object's prototype; and not nested without end. */
export function readJson(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser('error', 'error');
  app.addContentTypeParser('application/json', { parseAs: 'string' }, (request, body, done) =>
    parse(request, body as string, (fault, value) => {
      if (fault) return done(fault);
      if (isTooDeep(value)) return done(trouble(400, 'BAD_INPUT', 'Nothing was changed: what was sent is nested deeper than anything the library keeps. Load the page and send it again.'));
      done(null, value);
    }),
  );
}

import type { FastifyInstance } from 'fastify';
import { z } from 'zod';
import { isOperationName } from '../../../core/agreement/registry.ts';
import { refusalText, refused, type Refusal, type RefusalCode } from '../../../core/agreement/refusal.ts';
import { SubmitBody } from '../../../core/agreement/wire/http.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const Name = z.object({ name: z.string().max(40) });
const STATUS: Partial<Record<RefusalCode, number>> = { NOT_YOUR_ROLE: 403, NOT_YOURS: 403, BAD_INPUT: 422, OLD_PROGRAM: 426 };

export function operationRoutes(app: FastifyInstance, deps: Deps): void {
  app.post('/api/parts/:id/operations/:name', async (request, reply) => {
    const { person, id, hall } = await signedIn(deps, request);
    const { name } = read(Name, request.params);
    if (!isOperationName(name)) throw notFound('operation');
    const { operation, input, protocol } = read(SubmitBody, request.body);
    const refuse = (refusal: Refusal) => reply.code(STATUS[refusal.code] ?? 409).send({ ok: false, refusal, code: refusal.code, text: refusalText(refusal) });
    if (protocol !== undefined && protocol !== PROTOCOL) return refuse(refused('OLD_PROGRAM').refusal);
    const answer = await hall.authority.submit(idOf(request.params), { request: { operation, name, input }, asker: { person: person.id, session: id } });
    if (!answer) throw notFound('part');
    if (answer.ok) return { ok: true, entry: answer.entry };
    if ('refusal' in answer) return refuse(answer.refusal);
    if ('fault' in answer) throw answer.fault;
    throw trouble(401, 'SIGNED_OUT', 'Not written: you are not signed in any more. Open a sign-in link, then it is sent again.');
  });
}

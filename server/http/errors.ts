import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Trouble } from '../../core/agreement/wire/http.ts';
import { isFull, isUnavailable } from '../store/unavailable.ts';
import type { Deps } from './deps.ts';
import { faultCalled, incidentName } from './incident.ts';
import { TroubleAnswer } from './trouble.ts';

export const AWAY: Trouble & { code: 'SHELVES_AWAY' } = { code: 'SHELVES_AWAY', text: 'The library cannot reach its shelves just now. Nothing you wrote is lost: it is sent again by itself in a moment.' };

const FULL: Trouble & { code: 'SHELVES_FULL' } = { code: 'SHELVES_FULL', text: 'The library’s disk is full, so nothing can be written just now. Nothing you wrote is lost: it is sent again by itself once there is room. Tell whoever looks after Bowline.' };

/** What people are told while nothing can be written. */
export const awayFor = (reason: unknown): Trouble & { code: 'SHELVES_AWAY' | 'SHELVES_FULL' } => (isFull(reason) ? FULL : AWAY);

/** Limits of the framework, in our words. */
const KNOWN: Record<string, Trouble> = {
  FST_REQ_FILE_TOO_LARGE: { code: 'TOO_LARGE', text: 'The file is larger than 60 MB, more than the library takes. Save it as compressed MusicXML (.mxl) and send it again.' },
  FST_PARTS_LIMIT: { code: 'TOO_LARGE', text: 'Nothing was changed: that is more than the library takes in one form. Send fewer files at once.' },
  FST_FILES_LIMIT: { code: 'TOO_LARGE', text: 'Nothing was changed: that is more than the library takes in one form. Send fewer files at once.' },
  FST_FIELDS_LIMIT: { code: 'TOO_LARGE', text: 'Nothing was changed: that is more than the library takes in one form. Send fewer files at once.' },
  FST_ERR_CTP_BODY_TOO_LARGE: { code: 'TOO_LARGE', text: 'That is more than the library takes at once. Send it in smaller pieces.' },
  FST_ERR_CTP_INVALID_JSON_BODY: { code: 'BAD_INPUT', text: 'Nothing was changed: what was sent is not JSON. Send it again.' },
  FST_ERR_CTP_EMPTY_JSON_BODY: { code: 'BAD_INPUT', text: 'Nothing was changed: nothing was sent. Send it again.' },
  FST_ERR_CTP_INVALID_MEDIA_TYPE: { code: 'BAD_INPUT', text: 'Nothing was changed: send JSON, or a file as a form.' },
};

/** The one place where something thrown becomes an answer. A fault of ours is logged under a name that the reader is told. */
export function answerErrors(app: FastifyInstance, deps: Deps): void {
  app.setErrorHandler((reason, request, reply) => {
    if (reason instanceof TroubleAnswer) return answer(reply, reason.status, reason.body);
    if (isUnavailable(reason)) return answer(reply.header('retry-after', '1'), 503, awayFor(reason));
    const { code, statusCode } = reason as { code?: string; statusCode?: number };
    if (statusCode !== undefined && statusCode < 500) return answer(reply, statusCode, KNOWN[code ?? ''] ?? { code: 'BAD_INPUT', text: 'Nothing was changed: the library could not read what was sent. Load the page and send it again.' });
    const incident = incidentName();
    deps.log(`Fault "${incident}" at ${request.method} ${request.routeOptions.url ?? 'no route'}`, reason, { incident, request: request.id });
    return answer(reply, 500, faultCalled(incident));
  });
}

/** An address that cannot be decoded reaches no route. */
export function answerBadAddress(_reason: Error, _request: FastifyRequest, reply: FastifyReply): void {
  void answer(reply, 400, { code: 'BAD_INPUT', text: 'There is no such address in the library. Go back to the shelf and open it from there.' });
}

function answer(reply: FastifyReply, status: number, body: Trouble): FastifyReply {
  return reply.code(status).type('application/json; charset=utf-8').send(body);
}

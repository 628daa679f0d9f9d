import { STATUS_CODES } from 'node:http';
import type { Socket } from 'node:net';
import { PassThrough, type Readable } from 'node:stream';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Trouble } from '../../core/agreement/wire/http.ts';
import { trouble } from './trouble.ts';

/** How long somebody may take to say what they want. A whole archive over a slow line needs minutes; what is only written down does not. Chosen, not measured. */
const HEADERS = 15_000;
const BODY = 20_000;
const UPLOAD = 600_000;
const LOOKED_AFTER = 5_000;
const LAST_WORDS = 2_000;

/** For the server itself: it drops connections that say nothing, or never come to an end. */
export const PATIENCE = { requestTimeout: UPLOAD, http: { headersTimeout: HEADERS, connectionsCheckingInterval: LOOKED_AFTER }, clientErrorHandler: notUnderstood };

const SLOW: Trouble = { code: 'TOO_SLOW', text: 'Nothing was changed: what was sent did not come to its end. Look at your connection and send it again.' };
const KNOWN: Record<string, [number, Trouble]> = {
  HPE_HEADER_OVERFLOW: [431, { code: 'TOO_LARGE', text: 'Nothing was changed: the address or the cookies of this browser are longer than the library reads. Clear its cookies for this address and open the page again.' }],
  ERR_HTTP_REQUEST_TIMEOUT: [408, SLOW],
};
const NOT_HTTP: [number, Trouble] = [400, { code: 'BAD_INPUT', text: 'Nothing was changed: this is no request the library can read. Load the page and do it again.' }];

/** What never became a request is answered in the same form as everything else, and the line is cut. */
function notUnderstood(fault: NodeJS.ErrnoException, socket: Socket): void {
  if (fault.code === 'ECONNRESET' || socket.destroyed || socket.writableEnded) return;
  const [status, said] = KNOWN[fault.code ?? ''] ?? NOT_HTTP;
  const body = JSON.stringify(said);
  // What still comes is let go by for a moment: a line that is cut with something unread loses the answer.
  setTimeout(() => socket.destroy(), LAST_WORDS).unref();
  socket.end(`HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\nContent-Length: ${Buffer.byteLength(body)}\r\nContent-Type: application/json; charset=utf-8\r\nX-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n${body}`);
  socket.removeAllListeners('data').on('data', () => {});
}

/** A body that is written down, not uploaded, has to be there soon: before it is, nobody has been asked who sends it. */
export function waitForBodies(app: FastifyInstance): void {
  app.addHook('preParsing', async (request: FastifyRequest, reply, payload: Readable) => {
    const { 'content-type': type, 'content-length': length, 'transfer-encoding': piecemeal } = request.headers;
    if (type?.startsWith('multipart/') || (!piecemeal && !Number(length))) return payload;
    const whole = new PassThrough().on('error', () => {});
    const timer = setTimeout(() => {
      void reply.header('connection', 'close');
      payload.unpipe(whole);
      whole.destroy(trouble(408, SLOW.code, SLOW.text));
    }, BODY);
    whole.once('close', () => clearTimeout(timer));
    payload.once('error', (fault) => whole.destroy(fault));
    return payload.pipe(whole);
  });
}

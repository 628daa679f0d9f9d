import type { FastifyRequest } from 'fastify';
import { idOf } from './input.ts';
import type { Kind, Thing } from '../store/whereabouts.ts';

/** What the id in an address names, by the address's beginning. */
const KIND_OF: Record<string, Kind> = {
  '/api/parts/:id': 'part',
  '/api/works/:id': 'work',
  '/api/programmes/:id': 'programme',
  '/api/sections/:id': 'section',
  '/api/archive/:id': 'set',
  '/api/errata/:id': 'erratum',
  '/api/imports/:id': 'import',
};

/** The thing that a request is about; null where it is about the ensemble as a whole, or about whoever asks. */
export function thingOf(request: FastifyRequest): Thing | null {
  const address = request.routeOptions.url?.split('/').slice(0, 4).join('/') ?? '';
  const kind = KIND_OF[address];
  return kind ? { kind, id: idOf(request.params) } : null;
}

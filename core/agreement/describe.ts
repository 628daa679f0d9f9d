import { z } from 'zod';
import { OPERATIONS } from './registry.ts';
import { REFUSALS } from './refusal.ts';

/** A JSON object of the document; its shape is OpenAPI's, version 3.1. */
export type Described = Record<string, unknown>;

const json = (schema: Described): Described => ({ content: { 'application/json': { schema } } });
const reference = (name: string): Described => ({ $ref: `#/components/schemas/${name}` });

const SCHEMAS: Record<string, Described> = {
  LogEntry: {
    type: 'object',
    description: 'One row of the part’s log.',
    required: ['seq', 'operation', 'name', 'input', 'events', 'by', 'byName', 'at'],
    properties: {
      seq: { type: 'integer', minimum: 1 },
      operation: { type: 'string', format: 'uuid' },
      name: { type: 'string', enum: Object.keys(OPERATIONS) },
      input: {},
      events: { type: 'array', items: { type: 'object', required: ['type'], properties: { type: { type: 'string' } } } },
      by: { type: 'string' },
      byName: { type: 'string' },
      at: { type: 'string', format: 'date-time' },
    },
  },
  Refusal: {
    type: 'object',
    description: 'Why nothing was written. Codes are permanent.',
    required: ['code', 'text'],
    properties: { code: { type: 'string', enum: Object.keys(REFUSALS) }, text: { type: 'string' } },
  },
};

function operationPath(operation: (typeof OPERATIONS)[keyof typeof OPERATIONS]): Described {
  const { $schema: _, ...input } = z.toJSONSchema(operation.input, { io: 'input' });
  const body = {
    type: 'object',
    additionalProperties: false,
    required: ['operation', 'input'],
    properties: {
      operation: { type: 'string', format: 'uuid', description: 'Chosen by the sender. The same id sent again gets the same answer and is written once.' },
      input,
      protocol: { type: 'integer' },
    },
  };
  return {
    post: {
      operationId: operation.name,
      summary: operation.summary,
      description: `For: ${operation.roles.join(', ')}.`,
      tags: ['operations'],
      parameters: [{ name: 'part', in: 'path', required: true, schema: { type: 'string' } }],
      requestBody: { required: true, ...json(body) },
      responses: {
        200: { description: 'Written: its row of the log.', ...json({ type: 'object', required: ['entry'], properties: { entry: reference('LogEntry') } }) },
        '4XX': { description: 'Not written: why, and what can be done.', ...json(reference('Refusal')) },
        503: { description: 'Not written yet: send it again with the same id.' },
      },
    },
  };
}

/**
 * The OpenAPI 3.1 description of the HTTP face: one path for each operation of the registry, and the paths and schemas the server adds.
 * Example: `describeHttp({ paths: { '/api/me': { get: { ... } } } })`.
 */
export function describeHttp(added: { paths?: Described; schemas?: Described } = {}): Described {
  const operations = Object.values(OPERATIONS).map((operation) => [`/api/parts/{part}/operations/${operation.name}`, operationPath(operation)]);
  return {
    openapi: '3.1.0',
    info: { title: 'Bowline', version: '1', description: 'A string section agrees its fingerings and bowings.' },
    paths: { ...Object.fromEntries(operations), ...added.paths },
    components: { schemas: { ...SCHEMAS, ...added.schemas } },
  };
}

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { canonical } from '../../../core/agreement/canonical.ts';
import { OPERATIONS } from '../../../core/agreement/registry.ts';
import { CLIENT_MESSAGES, PROTOCOL } from '../../../core/agreement/wire/socket.ts';

/**
 * Hash of everything two programs of one protocol must agree on. Never change a line that has been released: when this test fails, raise
 * PROTOCOL in core/agreement/wire/socket.ts and add a line, so that older pages are told to load again instead of being misread.
 */
const AGREED: Record<number, string> = {
  1: 'bcc90b5b3b4d2149',
  2: '8acb0e5639dde10b',
  3: 'eb29633bd048d3f0',
  4: 'ce375bd7708e8530',
  5: '8f10ce8322c6e697',
};

/** Types without schema, as they are written: what the server sends and what a row and a state hold. */
const TYPES = ['wire/socket.ts', 'event.ts', 'state.ts', 'people.ts'];

function typesOf(path: string): string {
  const source = readFileSync(join(import.meta.dirname, '../../../core/agreement', path), 'utf8');
  return source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/export const PROTOCOL = \d+;/, '')
    .replace(/\s+/g, ' ');
}

function hash(): string {
  const schemas = [...Object.entries(CLIENT_MESSAGES), ...Object.entries(OPERATIONS).map(([name, { input }]) => [`operation ${name}`, input] as const)];
  const text = canonical([schemas.map(([name, schema]) => [name, z.toJSONSchema(schema, { io: 'input' })]), TYPES.map(typesOf)]);
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}

describe('guarantee 10: an old page is told to load again, never misread', () => {
  it('messages, inputs, rows and states have not changed without a new protocol number', () => {
    expect({ protocol: PROTOCOL, hash: hash() }).toEqual({ protocol: PROTOCOL, hash: AGREED[PROTOCOL] });
  });

  it('every protocol number so far has its line', () => {
    expect(Object.keys(AGREED).map(Number)).toEqual(Array.from({ length: PROTOCOL }, (_, n) => n + 1));
  });
});

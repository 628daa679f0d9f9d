import { describe, expect, it } from 'vitest';
import { describeHttp } from '../../../core/agreement/describe.ts';
import { REFUSALS } from '../../../core/agreement/refusal.ts';
import { OPERATIONS, type OperationName } from '../../../core/agreement/registry.ts';

type Node = { [key: string]: Node };
const document = describeHttp({ paths: { '/api/me': { get: {} } }, schemas: { Me: { type: 'object' } } }) as unknown as Node;
const bodyOf = (name: string) => document['paths']![`/api/parts/{part}/operations/${name}`]!['post']!['requestBody']!['content']!['application/json']!['schema']!;

function references(node: unknown): string[] {
  if (node === null || typeof node !== 'object') return [];
  return Object.entries(node).flatMap(([key, value]) => (key === '$ref' ? [String(value)] : references(value)));
}

describe('the description of the HTTP face', () => {
  it('has one path for each operation of the registry, under its name, with who may ask', () => {
    const paths = Object.keys(document['paths']!).filter((path) => path.includes('operations'));
    expect(paths.sort()).toEqual(Object.keys(OPERATIONS).map((name) => `/api/parts/{part}/operations/${name}`).sort());
    for (const [name, operation] of Object.entries(OPERATIONS)) {
      const post = document['paths']![`/api/parts/{part}/operations/${name}`]!['post']!;
      expect(post).toMatchObject({ operationId: name, summary: operation.summary });
      for (const role of operation.roles) expect(post['description']).toContain(role);
    }
  });

  it('asks for exactly the fields the operation asks for, and none where there is a default', () => {
    for (const name of Object.keys(OPERATIONS) as OperationName[]) {
      const input = bodyOf(name)['properties']!['input']!;
      const shape = OPERATIONS[name].input.shape as Record<string, { safeParse(value: unknown): { success: boolean } }>;
      expect(Object.keys(input['properties'] ?? {}).sort()).toEqual(Object.keys(shape).sort());
      const needed = Object.keys(shape).filter((key) => !shape[key]!.safeParse(undefined).success);
      expect(((input['required'] as unknown as string[]) ?? []).sort()).toEqual(needed.sort());
    }
  });

  it('points only at schemas it holds, and names every refusal', () => {
    const schemas = document['components']!['schemas']!;
    const all = references(document);
    expect(all.length).toBeGreaterThan(0);
    expect(all.filter((one) => !schemas[one.replace('#/components/schemas/', '')])).toEqual([]);
    expect(schemas['Refusal']!['properties']!['code']!['enum']).toEqual(Object.keys(REFUSALS));
  });

  it('holds what the server adds', () => {
    expect(document['paths']!['/api/me']).toEqual({ get: {} });
    expect(document['components']!['schemas']!['Me']).toEqual({ type: 'object' });
  });
});

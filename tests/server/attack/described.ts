import type { Scene } from './scene.ts';

/** As much of JSON Schema as the library's description uses. */
export interface Shape {
  type?: string | string[];
  format?: string;
  pattern?: string;
  enum?: unknown[];
  const?: unknown;
  minimum?: number;
  minLength?: number;
  maxLength?: number;
  minItems?: number;
  required?: string[];
  properties?: Record<string, Shape>;
  additionalProperties?: boolean | Shape;
  propertyNames?: Shape;
  items?: Shape;
  anyOf?: Shape[];
  oneOf?: Shape[];
  allOf?: Shape[];
  [other: string]: unknown;
}

/** A route that takes JSON, as the running server describes it. */
export interface Route {
  method: 'POST' | 'PUT' | 'DELETE' | 'GET';
  path: string;
  body: Shape | null;
  takesFile: boolean;
}

/** Every route of the running server: operations come from their registry, the others from the list a test holds against the routes there are. */
export async function routesOf(scene: Scene): Promise<Route[]> {
  const { paths } = (await scene.send('/api/openapi.json')).json as { paths: Record<string, Record<string, { requestBody?: { content: Record<string, { schema: Shape }> } }>> };
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { requestBody }]) => ({
      method: method.toUpperCase() as Route['method'],
      path,
      body: requestBody?.content['application/json']?.schema ?? null,
      takesFile: 'multipart/form-data' in (requestBody?.content ?? {}),
    })),
  );
}

/** The address with the scene's own things in it. */
export function addressIn(scene: Scene, path: string): string {
  const ids: Record<string, string> = { part: scene.part, work: scene.work, programme: scene.programme, section: scene.section, person: scene.player.id, seq: '0' };
  return path.replace(/\{(\w+)\}/g, (_, name: string) => ids[name] ?? '00000000-0000-4000-8000-000000000000');
}

const choices = ({ anyOf, oneOf }: Shape): Shape[] => anyOf ?? oneOf ?? [];
export type Place = (string | number)[];

/** A text somebody writes: it has no form but its length. */
export const isFree = ({ type, format, pattern, enum: named, const: fixed }: Shape): boolean => type === 'string' && !format && !pattern && !named && fixed === undefined;

/** A value of the shape, the smallest, without what may be left out; `given` may say what stands at a place. */
export function sample(shape: Shape, given: (place: Place, shape: Shape) => unknown = () => undefined, place: Place = []): unknown {
  const said = given(place, shape);
  if (said !== undefined) return said;
  if (shape.const !== undefined) return shape.const;
  if (shape.enum) return shape.enum[0];
  const [first] = choices(shape);
  if (first) return sample(first, given, place);
  switch (Array.isArray(shape.type) ? shape.type[0] : shape.type) {
    case 'object':
      return Object.fromEntries(Object.entries(shape.properties ?? {}).filter(([name]) => shape.required?.includes(name)).map(([name, inner]) => [name, sample(inner, given, [...place, name])]));
    case 'array':
      return [sample(shape.items ?? {}, given, [...place, 0])];
    case 'integer':
    case 'number':
      return Math.max(shape.minimum ?? 1, 1) === 1 && (shape.minimum ?? 0) <= 1 ? 1 : shape.minimum;
    case 'boolean':
      return false;
    case 'null':
      return null;
    case 'string':
      if (shape.format === 'uuid') return crypto.randomUUID();
      if (shape.format === 'date') return '2027-03-01';
      if (shape.format === 'email') return 'ada@orchestra.example';
      if (shape.pattern?.includes('oi')) return '1o';
      if (shape.pattern?.includes(':')) return '19:30';
      return 'a'.repeat(Math.max(shape.minLength ?? 1, 1));
    default:
      return 'a';
  }
}

/** Every place of a shape, with what may stand there: objects, texts, numbers; one way through each choice. */
export function placesOf(shape: Shape, place: Place = []): { place: Place; shape: Shape }[] {
  const inner = [
    ...Object.entries(shape.properties ?? {}).flatMap(([name, one]) => placesOf(one, [...place, name])),
    ...(shape.items ? placesOf(shape.items, [...place, 0]) : []),
    ...choices(shape).flatMap((one) => placesOf(one, place)),
  ];
  return [{ place, shape }, ...inner];
}

/** The whole body in which the given shape stands at its place, whatever choice that takes. */
export function bodyWith(whole: Shape, target: Shape, value: unknown): unknown {
  const holds = (shape: Shape): boolean => placesOf(shape).some((one) => one.shape === target);
  const narrowed = (shape: Shape): Shape => {
    if (shape === target) return shape;
    const choice = choices(shape).find(holds);
    if (choice) return narrowed(choice);
    const onTheWay = Object.keys(shape.properties ?? {}).filter((name) => holds(shape.properties![name]!));
    return {
      ...shape,
      required: [...(shape.required ?? []), ...onTheWay],
      ...(shape.properties ? { properties: Object.fromEntries(Object.entries(shape.properties).map(([name, one]) => [name, narrowed(one)])) } : {}),
      ...(shape.items ? { items: narrowed(shape.items) } : {}),
    };
  };
  return sample(narrowed(whole), (_, shape) => (shape === target ? value : undefined));
}

import { afterEach, expect, it, vi } from 'vitest';
import { askEarly, getJson, Refused } from '../../../client/library/http.ts';

afterEach(() => vi.unstubAllGlobals());

/** A library that counts how often it was asked. */
function counting(): string[] {
  const asked: string[] = [];
  vi.stubGlobal('fetch', async (address: string) => Response.json({ answer: asked.push(address) }));
  return asked;
}

it('what was asked early is given to the first who asks, and asked for anew by the next', async () => {
  const asked = counting();
  askEarly('/me');
  expect(await getJson('/me')).toEqual({ answer: 1 });
  expect(asked).toEqual(['/api/me']);
  expect(await getJson('/me')).toEqual({ answer: 2 });
});

it('an early question that found no line is told to who asks', async () => {
  vi.stubGlobal('fetch', () => Promise.reject(new TypeError('cut')));
  askEarly('/me');
  await new Promise((resolve) => setTimeout(resolve));
  await expect(getJson('/me')).rejects.toBeInstanceOf(Refused);
});

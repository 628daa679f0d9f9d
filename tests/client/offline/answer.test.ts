import { describe, expect, it } from 'vitest';
import { answerTo, isOurs, type Surroundings } from '../../../client/offline/answer.ts';

const ORIGIN = 'https://library.example';
const page = { url: `${ORIGIN}/stand/1`, method: 'GET', mode: 'navigate' } as Request;
const asset = new Request(`${ORIGIN}/assets/index-abc.js`);
const icon = new Request(`${ORIGIN}/icon.svg`);
const away = () => Promise.reject(new Error('away'));

function around(kept: Record<string, string>, fetch: Surroundings['fetch'], wait: Surroundings['wait'] = () => new Promise(() => {})) {
  const put: string[] = [];
  const match = async (address: string) => (address in kept ? new Response(kept[address]) : undefined);
  const own = { match, put: async (address: string) => void put.push(address) };
  return { put, surroundings: { own, any: match, fetch, wait } };
}
const answered = async (request: Request, { surroundings }: { surroundings: Surroundings }) => (await answerTo(request, surroundings)).text();

describe('the keeper of the page', () => {
  it('gives the library’s page while it answers, and the kept one for any address where it does not', async () => {
    const kept = { '/index.html': 'kept' };
    expect(await answered(page, around(kept, async () => new Response('fresh')))).toBe('fresh');
    expect(await answered(page, around(kept, away))).toBe('kept');
    expect(await answered(page, around(kept, async () => new Response('bad gateway', { status: 502 })))).toBe('kept');
    expect(await answered(page, around(kept, () => new Promise(() => {}), async () => undefined))).toBe('kept');
  });

  it('gives a file that is named after what is in it from what is kept, and keeps one it did not have', async () => {
    expect(await answered(asset, around({ '/assets/index-abc.js': 'kept' }, away))).toBe('kept');
    const empty = around({}, async () => new Response('fetched'));
    expect(await answered(asset, empty)).toBe('fetched');
    expect(empty.put).toEqual(['/assets/index-abc.js']);
    const gone = around({}, async () => new Response('gone', { status: 404 }));
    await answered(asset, gone);
    expect(gone.put).toEqual([]);
  });

  it('asks for any other file anew, and falls back on the kept one', async () => {
    expect(await answered(icon, around({ '/icon.svg': 'kept' }, async () => new Response('fresh')))).toBe('fresh');
    expect(await answered(icon, around({ '/icon.svg': 'kept' }, away))).toBe('kept');
    await expect(answered(icon, around({}, away))).rejects.toThrow('away');
  });

  it('leaves alone what the library says, what is sent, and other sites', () => {
    const ours = (path: string, method = 'GET') => isOurs(new Request(new URL(path, ORIGIN), { method }), ORIGIN);
    expect([ours('/shelf'), ours('/assets/a.js'), ours('/apiary')]).toEqual([true, true, true]);
    expect([ours('/api/shelf'), ours('/socket/?x'), ours('/shelf', 'POST'), ours('https://other.example/a.js')]).toEqual([false, false, false, false]);
  });
});

import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openPost, type Post } from '../../../server/mail/post.ts';
import { goRound } from '../../../server/mail/round.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { decoded, Letterbox } from '../../support/letterbox.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

const box = new Letterbox();
let url: string;
beforeAll(async () => {
  url = await box.open();
});
afterAll(() => box.close());

let house: House, laid: LaidOut, post: Post, player: Visitor, principal: Visitor;
const lines: string[] = [];
beforeEach(async () => {
  const store = await inMemory();
  laid = await layOut(store);
  house = await openHouse(store, { letters: { minutes: 30 } });
  post = openPost(url, 'Bowline <bowline@orchestra.example>');
  [player, principal] = [await house.signIn(laid.player), await house.signIn(laid.principal)];
  box.letters.length = 0;
  box.refusing = false;
  lines.length = 0;
});
afterEach(async () => {
  post.close();
  await house.close();
});

const write = (who: Visitor, name: string, input: unknown) => who.post(`/api/parts/${laid.part}/operations/${name}`, { operation: randomUUID(), input });
const round = (at: string) => goRound({ store: house.store, authority: house.authority, post, minutes: 30, address: 'https://bowline.example', log: (line) => lines.push(line) }, new Date(at));
const naming = () => write(principal, 'comment', { id: randomUUID(), measure: 2, text: '@Mona Castell, would you try it?', mentions: [{ person: laid.player.id, name: 'Mona Castell' }] });

describe('letters by a real post', () => {
  it('nobody gets one who did not ask for it', async () => {
    await naming();
    expect(await round('2026-11-26T10:00:00Z')).toBe(0);
    expect(box.letters).toEqual([]);
  });

  it('tells who is named and where, in the language chosen, and how to stop', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'de' });
    await naming();
    expect(await round('2026-11-26T10:00:00Z')).toBe(1);
    const [letter] = box.letters;
    expect(letter!.to).toEqual(['mona@orchestra.example']);
    const text = decoded(letter!.text);
    expect(text).toContain('Ilya Brandt nennt Sie, Takt 1: „@Mona Castell, would you try it?“');
    expect(text).toContain(`https://bowline.example/stand/${laid.part}?m=2`);
    expect(text).toContain('keine Briefe mehr');
  });

  it('what happened before the letters were wanted is no news, and nothing is told twice', async () => {
    await naming();
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    expect(await round('2026-11-26T10:00:00Z')).toBe(0);
    await naming();
    expect([await round('2026-11-26T10:01:00Z'), await round('2026-11-26T11:00:00Z')]).toEqual([1, 0]);
  });

  it('comes at most once in the minutes set, with all that was kept back', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    await naming();
    await round('2026-11-26T10:00:00Z');
    const slip = oneMark();
    await write(player, 'propose', slip);
    await write(principal, 'adopt', { proposal: slip.id, revision: 1 });
    await naming();
    expect([await round('2026-11-26T10:29:00Z'), await round('2026-11-26T10:31:00Z')]).toEqual([0, 1]);
    expect(decoded(box.letters[1]!.text)).toMatch(/Bowline: 2 things concern you/);
    expect(decoded(box.letters[1]!.text)).toMatch(/Your 0a is inked in by Ilya Brandt\./);
  });

  it('what the player has seen on the stand is not written of', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    await naming();
    await player.put(`/api/parts/${laid.part}/seen`, { seq: 1 });
    expect(await round('2026-11-26T10:00:00Z')).toBe(0);
  });

  it('asks for votes only in the days before the rehearsal, once a day', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    await write(principal, 'propose', oneMark());
    expect(await round('2027-02-20T10:00:00Z')).toBe(0);
    expect([await round('2027-02-27T10:00:00Z'), await round('2027-02-27T20:00:00Z'), await round('2027-02-28T10:00:00Z')]).toEqual([1, 0, 1]);
    expect(decoded(box.letters[0]!.text)).toContain('0a by Ilya Brandt waits for your vote; the first rehearsal is on 1 March.');
    expect(await round('2027-03-02T10:00:00Z')).toBe(0);
  });

  it('a letter the post does not take is tried again', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    await naming();
    box.refusing = true;
    expect(await round('2026-11-26T10:00:00Z')).toBe(0);
    expect(lines).toEqual(['A letter was not taken by the post; it is tried again.']);
    box.refusing = false;
    expect(await round('2026-11-26T10:01:00Z')).toBe(1);
  });

  it('the address is shown to its owner alone, and forgotten when they say so', async () => {
    await player.put('/api/me/letters', { address: 'mona@orchestra.example', language: 'en' });
    expect((await player.get('/api/me/letters')).json).toEqual({ minutes: 30, wish: { address: 'mona@orchestra.example', language: 'en' } });
    const seenByOthers = await Promise.all(['/api/me/letters', '/api/shelf', `/api/parts/${laid.part}`, '/api/me/waiting'].map(async (path) => (await principal.get(path)).text));
    expect(seenByOthers.join()).not.toContain('mona@');
    expect((await player.remove('/api/me/letters')).json).toEqual({ minutes: 30, wish: null });
    await naming();
    expect(await round('2026-11-26T10:00:00Z')).toBe(0);
  });

  it('no address, no letter: what is none is refused in a sentence', async () => {
    expect((await player.put('/api/me/letters', { address: 'mona', language: 'en' })).status).toBe(400);
    expect((await player.put('/api/me/letters', { address: 'a@b.example\r\nBcc: c@d.example', language: 'en' })).status).toBe(400);
  });
});

describe('what waits, asked for over all parts', () => {
  it('names the part, the work and the printed measure, and leaves out what was seen', async () => {
    await naming();
    const { json } = await player.get('/api/me/waiting');
    expect(json).toMatchObject({ parts: [{ id: laid.part, work: { title: 'Spring' }, programme: laid.programme, waits: [{ kind: 'named', measure: 2, who: 'Ilya Brandt' }], numbers: { 2: '1' } }] });
    expect((await principal.get('/api/me/waiting')).json).toEqual({ parts: [] });
    expect((await house.visitor().get('/api/me/waiting')).status).toBe(401);
    expect((await player.put('/api/parts/gone/seen', { seq: 1 })).status).toBe(404);
  });
});

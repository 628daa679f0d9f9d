import { randomUUID } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { attacked } from './attacked.ts';
import { saidIn, shout, statusOf, wire } from './wire.ts';

const { scene, whileOthersPlay } = attacked();
/** Comes in before anybody else does, since whoever comes from one address is let in so often a minute only. */
let flooder: Awaited<ReturnType<ReturnType<typeof scene>['newcomer']>>;
beforeAll(async () => {
  flooder = await scene().newcomer('Otto Flood');
});
const PATIENT = { timeout: 300_000 };
const refusal = (status: number, code: string) => ({ status, json: { code, text: expect.stringMatching(/.{20,}/) } });
const many = <T>(count: number, make: (n: number) => Promise<T>): Promise<T[]> => Promise.all(Array.from({ length: count }, (_, n) => make(n)));

describe('requests that take their time', PATIENT, () => {
  it('headers that never come to an end are cut off with a sentence', async () => {
    const line = await wire(scene().port);
    line.write('GET /api/me HTTP/1.1\r\nHost: bowline\r\nX-One: 1\r\n');
    const drip = setInterval(() => line.write('X-More: 1\r\n'), 500);
    const answer = await line.cut;
    clearInterval(drip);
    expect(statusOf(answer)).toBe(408);
    expect(saidIn(answer)).toMatchObject({ code: 'TOO_SLOW', text: expect.stringContaining('send it again') });
  });

  it('a connection that never says anything is cut off', async () => {
    const line = await wire(scene().port);
    expect(statusOf(await line.cut)).toBe(408);
  });

  it('a body that never comes to an end is cut off with a sentence, before anybody is signed in for it', async () => {
    const line = await wire(scene().port);
    line.write('POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nContent-Type: application/json\r\nContent-Length: 900\r\n\r\n{"token":"');
    const drip = setInterval(() => line.write('a'), 500);
    const answer = await line.cut;
    clearInterval(drip);
    expect(statusOf(answer)).toBe(408);
    expect(saidIn(answer)).toMatchObject({ code: 'TOO_SLOW' });
  });

  it.each([
    ['300 connections that drip headers', 300, 'GET /api/me HTTP/1.1\r\nHost: bowline\r\n', 'X-More: 1\r\n'],
    ['300 connections that drip a body', 300, 'POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nContent-Type: application/json\r\nContent-Length: 900000\r\n\r\n{"token":"', 'a'],
    ['1,000 connections that say nothing', 1000, '', ''],
  ])('%s leave others answered within twice their usual time', async (name, count, start, more) => {
    await whileOthersPlay(name, async () => {
      const lines = await many(count, () => wire(scene().port));
      for (let turn = 0; turn < 5; turn++) {
        if (start) for (const line of lines) line.write(turn ? more : start);
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      for (const line of lines) line.drop();
    });
  });
});

describe('requests that are too much', PATIENT, () => {
  const asPrincipal = (path: string, body: unknown, headers = {}) => scene().send(path, { method: 'POST', cookie: scene().principal.cookie, body, headers });
  const comment = () => `/api/parts/${scene().part}/operations/comment`;
  const deep = (levels: number, open: string, close: string) => open.repeat(levels) + '1' + close.repeat(levels);

  it('headers of a megabyte are refused, and others are answered meanwhile', async () => {
    const huge = `GET /api/me HTTP/1.1\r\nHost: bowline\r\nCookie: bowline=${'x'.repeat(1_000_000)}\r\n\r\n`;
    await whileOthersPlay('headers of a megabyte', async () => {
      const answer = await shout(scene().port, huge);
      expect(statusOf(answer)).toBe(431);
      expect(saidIn(answer)).toMatchObject({ code: 'TOO_LARGE' });
    });
  });

  it.each([
    ['arrays', () => `{"operation":"${randomUUID()}","input":${deep(200_000, '[', ']')}}`],
    ['objects', () => `{"operation":"${randomUUID()}","input":${deep(150_000, '{"a":', '}')}}`],
  ])('JSON nested without end (%s) is refused, and others are answered meanwhile', async (name, body) => {
    await whileOthersPlay(`JSON nested without end: ${name}`, async () => {
      expect(await asPrincipal(comment(), body(), { 'content-type': 'application/json' })).toMatchObject(refusal(400, 'BAD_INPUT'));
    });
  });

  it('numbers of a section that are nested without end are refused', async () => {
    const body = `{"bowing/length":${deep(100_000, '[', ']')}}`;
    expect(await scene().send(`/api/sections/${scene().section}/settings`, { method: 'PUT', cookie: scene().principal.cookie, body, headers: { 'content-type': 'application/json' } })).toMatchObject(refusal(400, 'BAD_INPUT'));
  });

  it('more than a megabyte of JSON is refused, and others are answered meanwhile', async () => {
    const body = { operation: randomUUID(), input: { text: 'x'.repeat(1_100_000) } };
    await whileOthersPlay('more than a megabyte of JSON', async () => expect(await asPrincipal(comment(), body)).toMatchObject(refusal(413, 'TOO_LARGE')));
  });

  it('packed bodies are not unpacked', async () => {
    const bomb = gzipSync(Buffer.alloc(50_000_000, 32));
    expect(await asPrincipal(comment(), bomb, { 'content-type': 'application/json', 'content-encoding': 'gzip' })).toMatchObject(refusal(400, 'BAD_INPUT'));
  });

  it.each(['{"__proto__":{"librarian":true}}', '{"constructor":{"prototype":{"librarian":true}}}', '{"token":"aaaaaaaaaaaaaaaaaaaaaaaa","__proto__":{"x":1}}', '{"\\u005f_proto__":{"librarian":true}}'])('keys that reach an object’s prototype are refused: %s', async (body) => {
    expect(await scene().send('/api/me/hand', { method: 'PUT', cookie: scene().player.cookie, body, headers: { 'content-type': 'application/json' } })).toMatchObject(refusal(400, 'BAD_INPUT'));
    expect((await scene().send('/api/me', { cookie: scene().player.cookie })).json.librarian).toBe(false);
  });

  it('a flood from one sign-in is slowed down with a sentence, and others are answered meanwhile', async () => {
    const { cookie } = flooder;
    const answers = new Map<number, number>();
    await whileOthersPlay('a flood of requests', async () => {
      for (const { status, json } of await many(200, () => scene().send('/api/me', { cookie }))) {
        answers.set(status, (answers.get(status) ?? 0) + 1);
        if (status !== 200) expect(json).toMatchObject({ code: 'TOO_MUCH', text: expect.stringContaining('Wait a minute') });
      }
    });
    while (!answers.has(429)) for (const { status } of await many(200, () => scene().send('/api/me', { cookie }))) answers.set(status, (answers.get(status) ?? 0) + 1);
    expect([...answers.keys()].sort()).toEqual([200, 429]);
    expect((await scene().send('/api/me', { cookie: scene().player.cookie })).status).toBe(200);
  });
});

describe('forms that are none', PATIENT, () => {
  const post = (body: string | Buffer, type: string) => scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, body, headers: { 'content-type': type } });
  const part = (name: string, head: string, content: string) => `--b\r\nContent-Disposition: form-data; name="${name}"${head}\r\n\r\n${content}\r\n`;
  const form = 'multipart/form-data; boundary=b';

  it.each([
    ['thousands of parts', () => Array.from({ length: 5_000 }, (_, n) => part(`f${n}`, '', 'x')).join('') + '--b--\r\n'],
    ['thousands of files', () => Array.from({ length: 3_000 }, (_, n) => part('file', `; filename="${n}.xml"`, 'x')).join('') + '--b--\r\n'],
    ['a name of a megabyte', () => `${part('file', `; filename="${'n'.repeat(1_000_000)}.xml"`, 'x')}--b--\r\n`],
    ['thousands of headers in a part', () => `--b\r\n${Array.from({ length: 5_000 }, (_, n) => `X-H${n}: 1`).join('\r\n')}\r\nContent-Disposition: form-data; name="file"; filename="a.xml"\r\n\r\nx\r\n--b--\r\n`],
    ['no end to it', () => part('file', '; filename="a.xml"', '<score-partwise>').slice(0, -2)],
    ['nothing in it', () => '--b--\r\n'],
    ['no file in it', () => `${part('title', '', 'x')}--b--\r\n`],
  ])('%s: refused with a sentence, and others are answered meanwhile', async (name, make) => {
    const body = make();
    await whileOthersPlay(`a form with ${name}`, async () => {
      const { status, json } = await post(body, form);
      expect(status).toBeGreaterThanOrEqual(400);
      expect(status).toBeLessThan(500);
      expect(json).toMatchObject({ code: expect.stringMatching(/^[A-Z_]+$/), text: expect.stringMatching(/.{20,}/) });
    });
  });

  it.each([['multipart/form-data', '--b--'], ['multipart/form-data; boundary=', '--b--'], ['text/plain', '<score-partwise/>'], ['application/xml', '<score-partwise/>'], ['application/x-www-form-urlencoded', 'file=x']])('as %s it is refused', async (type, body) => {
    const { status, json } = await post(body, type);
    expect([400, 406, 415]).toContain(status);
    expect(json).toMatchObject({ code: expect.any(String), text: expect.stringMatching(/.{20,}/) });
  });
});

describe('requests that mean two things', PATIENT, () => {
  const hidden = 'GET /api/me HTTP/1.1\r\nHost: bowline\r\n\r\n';
  it.each([
    ['both lengths', `POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nContent-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n${hidden}`],
    ['two lengths', `POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nContent-Length: 0\r\nContent-Length: ${hidden.length}\r\n\r\n${hidden}`],
    ['a way to send that nobody knows', `POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nTransfer-Encoding: xchunked\r\n\r\n0\r\n\r\n${hidden}`],
    ['a header name with a space', `POST /api/sign-in HTTP/1.1\r\nHost: bowline\r\nTransfer-Encoding : chunked\r\n\r\n0\r\n\r\n${hidden}`],
    ['a bare line feed in a header', `GET /api/health HTTP/1.1\nHost: bowline\nX: 1\n\n${hidden}`],
    ['no request at all', '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03'],
  ])('%s: answered once at most, with a refusal, and the line is cut', async (_, bytes) => {
    const answer = await shout(scene().port, bytes);
    expect(answer.match(/HTTP\/1\.1 \d{3}/g)).toHaveLength(1);
    expect(statusOf(answer)).toBe(400);
    expect(saidIn(answer)).toMatchObject({ code: 'BAD_INPUT', text: expect.stringMatching(/.{20,}/) });
  });

  it.each(['TRACE', 'CONNECT', 'PROPFIND', 'PATCH', 'LOCK'])('the method %s does nothing', async (method) => {
    const answer = await shout(scene().port, `${method} /api/me HTTP/1.1\r\nHost: bowline\r\nCookie: ${scene().player.cookie}\r\nX-Echo: curlew\r\nConnection: close\r\n\r\n`);
    expect([0, 400, 404, 405]).toContain(statusOf(answer));
    expect(answer).not.toContain('curlew');
    expect(answer).not.toContain(scene().player.cookie);
  });
});

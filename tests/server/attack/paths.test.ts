import { beforeAll, describe, expect, it } from 'vitest';
import { attacked } from './attacked.ts';
import { zipByHand } from '../../support/zipByHand.ts';
import { note, scoreText } from '../../support/scoreText.ts';
import { addressIn, routesOf, type Route } from './described.ts';
import { formOf } from './scene.ts';

const { scene } = attacked();
let routes: Route[];
beforeAll(async () => (routes = await routesOf(scene())));

const CLIMBING = ['../../../../etc/passwd', '..%2f..%2f..%2fetc%2fpasswd', '%2e%2e/%2e%2e/etc/passwd', '..%252f..%252fetc%252fpasswd', '..\\..\\windows\\win.ini', '%5c..%5c..%5cwin.ini', '%00', 'a%00.xml', '%c0%ae%c0%ae/etc/passwd', '%', '%zz', '%ff%fe', '//etc/passwd', 'CON', 'NUL.xml', 'file:///etc/passwd', '.git/config', '.env', 'package.json'];
const SECRET = /root:.*:0:0|\[core\]|"dependencies"|\[fonts\]/;

describe('a path that climbs out', { timeout: 300_000 }, () => {
  it.each(['/', '/assets/', '/fonts/', '/sign-in/', '/api/', '/socket/'])('under %s leads to no file of the house', async (start) => {
    for (const path of CLIMBING) {
      const { status, text, headers } = await scene().send(`${start}${path}`);
      expect([path, status < 500]).toEqual([path, true]);
      expect(text).not.toMatch(SECRET);
      // Whatever is no file of the page's is the page itself, or a refusal in words.
      if (status === 200) expect([path, headers['content-type']]).toEqual([path, 'text/html; charset=utf-8']);
      else if (start !== '/socket/') expect([path, JSON.parse(text)]).toEqual([path, expect.objectContaining({ text: expect.stringMatching(/.{20,}/) })]);
    }
  });

  it('no list of a folder, nothing of the sources, no hidden file is given out', async () => {
    for (const path of ['/assets', '/assets/', '/.git/HEAD', '/server/main.ts', '/package.json', '/prisma/schema.prisma', '/.bowline/pg/PG_VERSION', '/assets/../../../package.json', '/main.tsx']) {
      const { text } = await scene().send(path);
      expect(text).not.toMatch(/ref: refs|Index of|buildApp|generator client/);
    }
  });

  it('in the place of an id is answered on every route, and nothing breaks', async () => {
    const named = routes.filter(({ path, method }) => path.includes('{') && !path.includes('/operations/') && method !== 'DELETE');
    expect(named.length).toBeGreaterThan(25);
    for (const { method, path } of named) {
      for (const one of ['..%2f..%2fetc%2fpasswd', '%00', '%2e%2e', `${'x'.repeat(300)}`, "'%20or%201=1--", '%F0%9F%8E%BB', '__proto__', 'constructor', '%ED%A0%80']) {
        const address = path.replace(/\{\w+\}/, one);
        const { status, text } = await scene().send(addressIn(scene(), address), { method, cookie: scene().librarian.cookie, ...(method === 'GET' ? {} : { body: {} }) });
        expect([address, status]).toEqual([address, expect.toSatisfy((code: number) => code >= 400 && code < 500, 'a refusal')]);
        expect(text).not.toMatch(SECRET);
      }
    }
  });
});

describe('the name of an uploaded file', { timeout: 300_000 }, () => {
  const NAMES = ['../../../../tmp/out.xml', '..\\..\\out.xml', '/etc/cron.d/out.xml', 'C:\\out.xml', 'CON.xml', 'out.xml\u0000.sh', 'a\r\nSet-Cookie: x=1.xml', 'a";filename="b.exe', `${'n'.repeat(400)}.xml`, '<img src=x onerror=alert(1)>.xml', '.xml', '..', '\u202Efdp.xml', "'; drop table works; --.xml", '=cmd.xml'];

  it.each(NAMES)('%j names no file on the server; the download bears a name that goes nowhere', async (name) => {
    const form = await formOf([[name, scoreText([note('C5', 16)], { name: 'Violin I' })]]);
    const laid = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, ...form });
    expect(laid.status).toBe(200);
    const { id } = laid.json.work.parts[0];
    const { headers, text } = await scene().send(`/api/parts/${id}/source`, { cookie: scene().librarian.cookie });
    const said = String(headers['content-disposition']);
    expect(said).toMatch(/^attachment; filename="[\w .,()-]*"; filename\*=UTF-8''[\w.~!$&+^`|%-]*$/);
    expect(decodeURIComponent(said.split("UTF-8''")[1]!)).not.toMatch(/[/\\\p{Cc}]/u);
    expect(headers['set-cookie']).toBeUndefined();
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(text).toContain('score-partwise');
  });

  it('files inside an archive that climb out are refused, and none is written', async () => {
    const container = { name: 'META-INF/container.xml', body: Buffer.from('<container><rootfiles><rootfile full-path="score.musicxml"/></rootfiles></container>') };
    const score = { name: 'score.musicxml', body: Buffer.from(scoreText([note('C5', 16)])) };
    for (const name of ['../out.xml', 'a/../../out.xml', '/out.xml', 'C:\\out.xml', '..\\out.xml', './out.xml', 'a//out.xml', `out\u0000.xml`, `${'d/'.repeat(400)}out.xml`]) {
      const form = await formOf([['climb.mxl', zipByHand([container, score, { name, body: Buffer.from('x') }])]]);
      const answer = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, ...form });
      expect([name, answer.status, answer.json.code]).toEqual([name, 422, 'BAD_ARCHIVE']);
    }
  });
});

describe('a part whose title climbs out', { timeout: 300_000 }, () => {
  it('is downloaded and packed under a name that stays where it is put', async () => {
    const title = '../../../evil';
    const text = scoreText([note('C5', 16)], { name: '..\\..\\Violin I' }).replace('<part-list>', `<work><work-title>${title}</work-title></work><part-list>`).replace(/(<work>.*<\/work>)(<part-list>)/, '$1$2');
    const form = await formOf([['evil.musicxml', text]]);
    const { json } = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, ...form });
    const { id, parts } = json.work;
    const printed = await scene().send(`/api/works/${id}/prints`, { method: 'POST', cookie: scene().librarian.cookie, body: { copies: [{ part: parts[0].id, for: ['section'] }], form: 'musicxml' } });
    expect(printed.status).toBe(200);
    const names = [...printed.bytes.toString('latin1').matchAll(/PK\x03\x04[\s\S]{22}([\s\S]{2})[\s\S]{2}/g)].map((found) => printed.bytes.subarray(found.index + 30, found.index + 30 + found[1]!.charCodeAt(0)).toString());
    expect(names).toHaveLength(1);
    expect(names[0]).not.toMatch(/[/\\]/);
    expect(printed.headers['content-disposition']).not.toContain('/');
  });
});

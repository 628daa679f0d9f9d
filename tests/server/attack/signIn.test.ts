import { describe, expect, it } from 'vitest';
import { attacked } from './attacked.ts';

const { scene, whileOthersPlay } = attacked();
const PATIENT = { timeout: 300_000 };
const cookieIn = (answer: { headers: Record<string, unknown> }): string => String(answer.headers['set-cookie'] ?? '').split(';')[0]!;
const tokenOf = (link: string): string => new URL(link).searchParams.get('token')!;

async function freshLink(name: string): Promise<{ link: string; person: { id: string } }> {
  return (await scene().send('/api/people', { method: 'POST', cookie: scene().librarian.cookie, body: { name } })).json;
}
const enter = (token: string, cookie = '', headers = {}) => scene().send('/api/sign-in', { method: 'POST', body: { token }, headers: { ...(cookie ? { cookie } : {}), ...headers } });
const me = (cookie: string) => scene().send('/api/me', { cookie });

describe('a sign-in that somebody else prepared', PATIENT, () => {
  it('a cookie that was chosen beforehand is not kept, and opens nothing', async () => {
    const planted = `bowline=${'p'.repeat(43)}`;
    const answer = await enter(tokenOf((await freshLink('Ruth Fixed')).link), planted);
    expect(answer.status).toBe(200);
    expect(cookieIn(answer)).toMatch(/^bowline=[\w-]{43}$/);
    expect(cookieIn(answer)).not.toBe(planted);
    expect((await me(planted)).status).toBe(401);
  });

  it('the attacker’s own sign-in under the victim’s browser ends when the victim signs in, and never becomes the victim’s', async () => {
    const attacker = await scene().newcomer('Abel Attack');
    const victim = await freshLink('Vera Victim');
    const answer = await enter(tokenOf(victim.link), attacker.cookie);
    expect((await me(attacker.cookie)).status).toBe(401);
    expect((await me(cookieIn(answer))).json.id).toBe(victim.person.id);
  });

  it('every sign-in has a token of its own, and signing out ends it at the library', async () => {
    const { person, link } = await freshLink('Rosa Rotated');
    const first = cookieIn(await enter(tokenOf(link)));
    const again = (await scene().send(`/api/people/${person.id}/link`, { method: 'POST', cookie: scene().librarian.cookie })).json as { link: string };
    const second = cookieIn(await enter(tokenOf(again.link), first));
    expect(second).not.toBe(first);
    expect((await me(first)).status).toBe(401);
    await scene().send('/api/sign-out', { method: 'POST', cookie: second });
    expect((await me(second)).status).toBe(401);
  });

  it('the cookie is out of reach of scripts and is not sent along from other sites', async () => {
    const answer = await enter(tokenOf((await freshLink('Cora Cookie')).link));
    expect(String(answer.headers['set-cookie'])).toMatch(/; Path=\/; HttpOnly; SameSite=Lax$/);
    expect(answer.text).not.toContain(cookieIn(answer).split('=')[1]);
  });
});

describe('one link used by many at once', PATIENT, () => {
  it('lets in one of them', async () => {
    const token = tokenOf((await freshLink('Olga Once')).link);
    const answers = await Promise.all(Array.from({ length: 12 }, () => enter(token)));
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    for (const { status, json } of answers.filter((one) => one.status !== 200)) expect([status, json.code]).toEqual([410, 'LINK_USED']);
  });
});

describe('links that are guessed', PATIENT, () => {
  it('are told apart from no others: every one gets the same answer', async () => {
    const used = tokenOf((await freshLink('Uma Used')).link);
    await enter(used);
    const answers = await Promise.all([used, 'g'.repeat(43), `${used.slice(0, -1)}A`].map((token) => enter(token)));
    expect(new Set(answers.map(({ status, text }) => `${status} ${text}`)).size).toBe(1);
  });

  it('soon get the answer to wait, whatever cookie, address or sender the guesser names, and others are answered meanwhile', async () => {
    const seen = new Map<number, number>();
    let guess = 0;
    const one = () => {
      guess += 1;
      const token = guess.toString(36).padStart(43, 'g');
      return enter(token, `bowline=${token}`, { 'x-forwarded-for': `10.0.${guess % 250}.${guess % 249}`, forwarded: `for=10.1.0.${guess % 250}`, 'x-real-ip': `10.2.0.${guess % 250}` });
    };
    await whileOthersPlay('guessing of links', async () => {
      for (const { status, json } of await Promise.all(Array.from({ length: 40 }, one))) {
        seen.set(status, (seen.get(status) ?? 0) + 1);
        expect([[410, 'LINK_USED'], [429, 'TOO_MUCH'], [429, 'TOO_OFTEN']]).toContainEqual([status, json.code]);
      }
    });
    // 60 a minute, and a minute may have turned meanwhile.
    expect(seen.get(410)).toBeLessThanOrEqual(60 * 6);
    expect(seen.get(429)).toBeGreaterThan(0);
    expect((await me(scene().player.cookie)).status).toBe(200);
  });
});

describe('what the server writes down', () => {
  it('names no token of a link and no sign-in but the links it is started with', () => {
    const given = scene().server.link('librarian');
    const said = scene().server.lines.filter((line) => !line.includes(given)).join('\n');
    for (const { cookie } of [scene().librarian, scene().principal, scene().player]) expect(said).not.toContain(cookie.split('=')[1]);
    expect(said).not.toMatch(/[\w-]{43}/);
  });
});

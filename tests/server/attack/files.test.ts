import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import type { ImportView } from '../../../core/agreement/wire/imports.ts';
import { conformanceCases } from '../../support/conformance.ts';
import { goodArchive, type Hostile, HOSTILE_FILES, HOSTILE_XML, RELATIVES } from '../../support/hostileFiles.ts';
import { attacked } from './attacked.ts';
import { formOf } from './scene.ts';

const { scene, whileOthersPlay } = attacked();
const lay = async (files: readonly [string, Uint8Array | string][], headers: Record<string, string> = {}) => {
  const form = await formOf(files);
  return scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, body: form.body, headers: { ...form.headers, ...headers } });
};
const works = async (): Promise<number> => (await scene().send('/api/shelf', { cookie: scene().librarian.cookie })).json.programmes[0].works.length;

describe('a hostile file', { timeout: 300_000 }, () => {
  /** Those that cost something to refuse are each looked at alone. */
  const HEAVY = /300,000|20 MB|entity bomb|310 MB|200 MB|500 names|60,000/;
  const all = [...HOSTILE_XML, ...HOSTILE_FILES, ...RELATIVES];
  const heavy = all.filter(({ name }) => HEAVY.test(name));
  const light = all.filter(({ name }) => !HEAVY.test(name));
  type Form = Awaited<ReturnType<typeof formOf>>;

  async function refused({ code, says, xml }: Hostile, form: Form): Promise<void> {
    const answer = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, ...form });
    expect(answer).toMatchObject({ status: 422, json: { code } });
    expect(answer.json.text).toMatch(says);
    if (xml) expect(answer.json.line).toBeGreaterThan(0);
  }

  it.each(heavy)('$name: is refused with a sentence, nothing of it is kept, and others are answered within twice their usual time', async (hostile: Hostile) => {
    const before = await works();
    const form = await formOf([['storm.mxl', await hostile.make()]]);
    await whileOthersPlay(hostile.name, () => refused(hostile, form));
    expect(await works()).toBe(before);
  });

  it('every one that is refused at a glance is refused with a sentence, nothing of it is kept, and others are answered within twice their usual time', async () => {
    const before = await works();
    const forms: [Hostile, Form][] = [];
    for (const hostile of light) forms.push([hostile, await formOf([['storm.mxl', await hostile.make()]])]);
    for (const [hostile, form] of forms) await refused(hostile, form);
    let next = 0;
    await whileOthersPlay(`${light.length} light ones in turn`, () => refused(...forms[next++ % forms.length]!));
    expect(await works()).toBe(before);
  });

  it('none of them keeps a good score out afterwards', async () => {
    expect((await lay([['good.mxl', goodArchive()]])).status).toBe(200);
  });
});

describe('the W3C suite of documents that are not well-formed', { timeout: 300_000 }, () => {
  const cases = conformanceCases().filter(({ wellFormed }) => !wellFormed);
  const TOGETHER = 60;

  it('every one is refused with a reason by the server itself, and others are answered within twice their usual time', async () => {
    expect(cases.length).toBeGreaterThan(600);
    const forms: { form: Awaited<ReturnType<typeof formOf>>; ids: string[] }[] = [];
    for (let from = 0; from < cases.length; from += TOGETHER) {
      const some = cases.slice(from, from + TOGETHER);
      forms.push({ form: await formOf(some.map(({ id, bytes }) => [`${id}.xml`, bytes])), ids: some.map(({ id }) => `${id}.xml`) });
    }
    const before = await works();
    const taken: string[] = [];
    let next = 0;
    await whileOthersPlay('W3C not well-formed', async () => {
      const { form, ids } = forms[next++ % forms.length]!;
      const sent = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, body: form.body, headers: { ...form.headers, prefer: 'respond-async' } });
      expect(sent.status).toBe(202);
      const view = await ended(sent.json.id);
      expect(view.files.map(({ fileName }) => fileName)).toEqual(ids);
      taken.push(...view.files.filter(({ trouble }) => !trouble?.code || !trouble.text).map(({ fileName }) => fileName));
    });
    while (next < forms.length) {
      const { form } = forms[next++]!;
      const sent = await scene().send(`/api/programmes/${scene().programme}/works`, { method: 'POST', cookie: scene().librarian.cookie, body: form.body, headers: { ...form.headers, prefer: 'respond-async' } });
      const view = await ended(sent.json.id);
      taken.push(...view.files.filter(({ trouble }) => !trouble?.code || !trouble.text).map(({ fileName }) => fileName));
    }
    expect(taken).toEqual([]);
    expect(await works()).toBe(before);
  });

  async function ended(id: string): Promise<ImportView> {
    for (;;) {
      await pause(60);
      const { json } = await scene().send(`/api/imports/${id}`, { cookie: scene().librarian.cookie });
      if (['done', 'refused', 'stopped'].includes(json.step)) return json;
    }
  }
});

import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ProgrammeOverview, SinceView } from '../../core/agreement/wire/overview.ts';
import type { ProgrammeView } from '../../core/agreement/wire/http.ts';
import type { MarkValue } from '../../core/music/mark.ts';
import { startBrowser } from '../support/browser.ts';
import { readPdf } from '../support/pdfDrawing.ts';
import { seriousViolations } from './axe.ts';
import { added, owedSigns, signsOf } from './exported.ts';
import { openHouse, type House } from './house.ts';
import { Librarian } from './librarian.ts';
import type { Reader } from './reader.ts';
import { Company, type Member } from './week/company.ts';
import { decide, DECISIONS, noteId, signOf, standing } from './week/decisions.ts';
import { copiesIn, signsOnCopy } from './week/paper.ts';
import { saltRoad, WORKS } from './week/scores.ts';

type Marked = Awaited<ReturnType<Reader['part']>>;

const PATIENT = { timeout: 240_000 };
/** Copies are made one after another, each by an engraver that shares the machine. */
const SLOW = { timeout: 200_000 };
const PROGRAMME = 'Salt and Lanterns';
const DEPUTY = 'Jon Ferrow';
const BY_DEPUTY = { measure: '10', why: 'The second finger is nearer.', keys: ['2'] };
const LATE: { measure: string; why: string; keys: string[]; marks: [number, MarkValue][] } = { measure: '33', why: 'The conductor wants it heavier.', keys: ['d'], marks: [[1, { kind: 'bow', bow: 'down' }]] };

/** The day so many days from today, as the page's own fields take it. */
const day = (from: number): string => new Date(Date.now() + from * 86_400_000).toISOString().slice(0, 10);

describe('a librarian’s week', PATIENT, () => {
  let house: House, browser: Browser, company: Company, librarian: Member, desk: Librarian, violins: Member, violas: Member, deputy: Member;
  /** Part ids under "work, part". */
  const parts = new Map<string, string>();
  const partOf = (work: string, part: string): string => parts.get(`${work}, ${part}`)!;

  const programme = async (title = PROGRAMME): Promise<ProgrammeView> => (await librarian.reader.shelf()).programmes.find((one) => one.title === title)!;
  const overview = async (): Promise<ProgrammeOverview> => JSON.parse(await librarian.reader.text(`/programmes/${(await programme()).id}/overview`)) as ProgrammeOverview;
  const says = (text: string | RegExp): Promise<void> => desk.sentence().filter({ hasText: text }).first().waitFor();
  const choice = async (within: Locator, label: string, option: string | RegExp): Promise<void> => {
    await within.getByRole('combobox', { name: label, exact: true }).click();
    await librarian.page.getByRole('option', { name: option, exact: typeof option === 'string' }).click();
  };
  const linkOf = async (name: string): Promise<string> => librarian.reader.linkFor((await librarian.reader.shelf()).people.find((one) => one.name === name)!.id);

  async function onShelf(title: string, season: string, first: string, concert: string): Promise<void> {
    const { page } = librarian;
    await page.goto(`${house.origin}/shelf`);
    const form = page.locator('form').filter({ hasText: 'A new programme' });
    for (const [label, said] of [['Title', title], ['Season', season], ['Conductor', 'Vera Lindqvist'], ['First rehearsal', first], ['Concert', concert]] as const) await form.getByLabel(label).fill(said);
    await form.getByRole('button', { name: 'put on the shelf' }).click();
    await page.getByRole('link', { name: title }).click();
  }

  async function lay(files: (typeof WORKS)[number]['files']): Promise<void> {
    await librarian.page.getByLabel('lay a score', { exact: true }).setInputFiles(files.map(({ name, bytes }) => ({ name, mimeType: 'application/octet-stream', buffer: bytes })));
    if (files.length > 1) await desk.press('one work');
  }

  beforeAll(async () => {
    [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
    company = new Company(browser, house.origin);
    librarian = await company.enter('librarian', house.links.get('librarian')!);
    desk = new Librarian(librarian.page, house.origin);
    [violins, violas] = [await company.enter('first violins', house.links.get('principal')!), await company.enter('violas', await linkOf('Maud Ellingrath'))];
  }, 240_000);

  afterAll(async () => {
    await browser?.close();
    await house?.stop();
  });

  it('begins with a programme: its days, its hall, and by when every part is to be ready', async () => {
    const { page } = librarian;
    await onShelf(PROGRAMME, '2026/27', day(6), day(10));
    await page.getByRole('button', { name: 'The programme, its days and deadlines' }).click();
    await page.getByRole('button', { name: 'one more rehearsal' }).click();
    await page.getByLabel('rehearsal 2, time').fill('10:00');
    await page.getByLabel('rehearsal 2, where, what for').fill('Hall 2');
    for (const [stage, by] of [['with the principal', -1], ['inked in', 2], ['on the stands', 4]] as const) await page.getByLabel(`${stage}, day`, { exact: true }).fill(day(by));
    await page.getByRole('listitem').filter({ hasText: 'round the section' }).getByRole('checkbox').check();
    await desk.press('keep these');
    await says(`${PROGRAMME} is kept.`);
    expect(await programme()).toMatchObject({
      conductor: 'Vera Lindqvist', season: '2026/27', days: [{ kind: 'rehearsal', date: day(6) }, { kind: 'rehearsal', date: day(7), time: '10:00', words: 'Hall 2' }, { kind: 'concert', date: day(10) }],
      deadlines: { withPrincipal: day(-1), roundSection: null, inkedIn: day(2), onStands: day(4) },
    });
  });

  it('goes on with three works as they come: a score, a file a part, and a packed one whose violins have no number', async () => {
    for (const { title, files } of WORKS) {
      await lay(files);
      await says(`${title}${title === 'Salt Road' ? ', The Crossing' : ''} lies in the folder: two string parts.`);
    }
    await desk.choose('Harbour Bells', 'Violin');
    await choice(librarian.page.locator('main'), 'section that plays it', 'Violin I');
    await expect.poll(async () => (await programme()).works.flatMap((work) => work.parts.map(({ name, section }) => `${work.title}, ${name}: ${section?.name ?? 'nobody'}`))).toEqual([
      'Salt Road, The Crossing, Violin I: Violin I', 'Salt Road, The Crossing, Viola: Viola', 'Lantern Dance, Violin I: Violin I', 'Lantern Dance, Viola: Viola', 'Harbour Bells, Violin: Violin I', 'Harbour Bells, Viola: Viola',
    ]);
    for (const work of (await programme()).works) for (const { id, name } of work.parts) parts.set(`${work.title.split(', ')[0]}, ${name}`, id);
  });

  it('seats both sections smaller for it, with a deputy who moves back with the desk', async () => {
    const { page } = librarian;
    await page.goto(`${house.origin}/shelf`);
    await page.getByLabel('A new person').fill(DEPUTY);
    await page.getByRole('button', { name: 'add', exact: true }).last().click();
    const link = await page.getByLabel(`Sign-in link for ${DEPUTY}; it opens once:`).inputValue();
    await desk.folder(PROGRAMME);
    const first = page.locator('.seatings .fold').filter({ hasText: 'Violin I ' });
    const viola = page.locator('.seatings .fold').filter({ hasText: 'Viola ' });
    for (const [seats, chairs] of [[first, '6'], [viola, '4']] as const) {
      await seats.locator('.fold-word').click();
      await choice(seats, 'chairs', chairs);
      await seats.getByText(`${chairs} players`.replace('4', 'four').replace('6', 'six')).waitFor();
    }
    await choice(first, 'desk 2 outside', DEPUTY);
    await first.getByText('1 deputising').waitFor();
    await first.getByRole('button', { name: 'move back by one' }).click();
    await says('Two desks moved back by one');
    deputy = await company.enter('deputy', link);
    expect(await deputy.reader.part(partOf('Salt Road', 'Violin I'))).toMatchObject({ roles: ['player'], seat: '3o' });
    const seated = await Promise.all([['Salt Road', 'Violin I'], ['Harbour Bells', 'Viola']].map(async ([work, part]) => (await librarian.reader.part(partOf(work!, part!))).section!.seats.map(({ seat, person }) => `${seat} ${person?.name}`)));
    expect(seated).toEqual([
      ['1o Ilse Tarnow', '1i Marek Dvorsin', '2o Hester Quill', '2i Tomas Breck', `3o ${DEPUTY}`, '3i Oren Halvard'],
      ['1o Maud Ellingrath', '1i Kenji Morozane', '2o Ottilie Farnbeck', '2i Silas Wrenfield'],
    ]);
  });

  it('shows what is late and who is waited for, and sends work after work to the principals in one step each', async () => {
    const { page } = librarian;
    const due = page.getByRole('region', { name: 'What is late' });
    await due.getByText(/Violin I, Lantern Dance: with the principal by .*, one day late\. It waits for Ilse Tarnow\./).waitFor();
    await due.getByText(/Viola, Harbour Bells: with the principal by .*, one day late\. It waits for Maud Ellingrath\./).waitFor();
    expect((await overview()).parts.map(({ due: next }) => [next?.stage, next?.days])).toEqual(Array(6).fill(['withPrincipal', -1]));
    for (const [work, part] of [['Salt Road, The Crossing', 'Viola'], ['Lantern Dance', 'Viola'], ['Harbour Bells', 'Viola']] as const) {
      await desk.choose(work, part);
      await desk.press('move both on');
      await says('Two parts of this work moved on: with the principal.');
    }
    await due.getByText('Nothing is late.').waitFor();
    expect((await overview()).parts.map(({ due: next }) => [next?.stage, next?.days])).toEqual(Array(6).fill(['inkedIn', 2]));
  });

  it('has the principals decide in pencil and ink, by keyboard, one of them on what the deputy laid', async () => {
    const salt = partOf('Salt Road', 'Violin I');
    const laying = (async () => {
      await deputy.player.stand(salt);
      await deputy.player.goTo(BY_DEPUTY.measure);
      await deputy.player.press(...BY_DEPUTY.keys);
      await deputy.player.lay(BY_DEPUTY.why);
      await deputy.player.sentence().filter({ hasText: 'laid' }).waitFor();
    })();
    const deciding = [violins, violas].map(async ({ player, reader }, which) => {
      for (const decision of DECISIONS.filter(({ part }) => (part === 'Viola') === (which === 1))) await decide(player, reader, partOf(decision.work, decision.part), decision);
    });
    await Promise.all([laying, ...deciding]);
    const { player, reader } = violins;
    await player.stand(salt);
    await player.goTo(BY_DEPUTY.measure);
    await player.press('Enter');
    await player.slip(BY_DEPUTY.why).waitFor();
    await player.press('Enter');
    await deputy.player.mark(noteId(await reader.part(salt), BY_DEPUTY.measure, 1), 'finger:2', 'adopted').waitFor();
    for (const { work, part } of DECISIONS) {
      const view = await reader.part(partOf(work, part));
      const owed = DECISIONS.filter((one) => one.work === work && one.part === part).flatMap(({ measure, marks }) => marks.map(([note, value]) => JSON.stringify([noteId(view, measure, note), value, 'all'])));
      if (view.id === salt) owed.push(JSON.stringify([noteId(view, BY_DEPUTY.measure, 1), { kind: 'finger', finger: 2 }, 'all']));
      expect(await standing(reader, view.id)).toEqual(owed.sort());
    }
  });

  it('knows when all is decided, and makes every copy for every desk of a work as one zip of PDFs with the marks on them', async () => {
    const { page } = librarian;
    for (const [member, works] of [[violins, [['Salt Road, The Crossing', 'Violin I'], ['Lantern Dance', 'Violin I'], ['Harbour Bells', 'Violin']]], [violas, [['Salt Road, The Crossing', 'Viola'], ['Lantern Dance', 'Viola'], ['Harbour Bells', 'Viola']]]] as const) {
      const folder = new Librarian(member.page, house.origin);
      await folder.folder(PROGRAMME);
      for (const [work, part] of works) {
        await folder.choose(work, part);
        const cell = (stage: string) => member.page.locator(`[data-part="${partOf(work.split(', ')[0]!, part)}"][data-stage="${stage}"]`);
        // Where somebody of the section has written, it is round the section already.
        if (await cell('withPrincipal').count()) await folder.press('move on');
        await cell('roundSection').waitFor();
        await folder.press('move on');
        await cell('inkedIn').waitFor();
      }
    }
    await desk.folder(PROGRAMME);
    await page.getByText('Nothing is late.').waitFor();
    expect((await overview()).parts.map(({ waitedFor, due }) => [waitedFor.turn, due?.stage])).toEqual(Array(6).fill(['librarian', 'onStands']));
    for (const { title } of WORKS) {
      const work = (await programme()).works.find((one) => one.title.startsWith(title))!;
      await desk.choose(work.title, 'Viola');
      const prints = page.locator('section.prints');
      for (const { name } of work.parts) {
        const wanted = prints.getByRole('checkbox', { name, exact: true });
        if (!(await wanted.isChecked())) await wanted.check();
        await choice(prints, `copies of ${name}`, /^one for each desk/);
      }
const [download] = await Promise.all([page.waitForEvent('download', SLOW), prints.getByRole('button', { name: 'Make five copies' }).click()]);
      expect(download.suggestedFilename()).toBe(`${work.title} - parts.zip`);
      const copies = await copiesIn(download);
      expect([...copies.keys()].sort()).toEqual(work.parts.flatMap(({ name }) => Array.from({ length: name === 'Viola' ? 2 : 3 }, (_, i) => `${work.title} - ${name} - Desk ${i + 1}`)).sort());
      for (const [name, pages] of copies) {
        const part = work.parts.find((one) => name.includes(` - ${one.name} - `))!.name;
        const owed = DECISIONS.filter((one) => one.work === title && one.part === part).flatMap(({ marks }) => marks.map(([, value]) => signOf(value)));
        if (part === 'Violin I' && title === 'Salt Road') owed.push('2');
        expect([name, await signsOnCopy(pages)]).toEqual([name, owed.sort()]);
        expect(pages[0]!.words).toContain(work.title);
        for (const { words } of pages) expect(words).toContain(part);
      }
    }
  });

  it('puts the parts on the stands, and a late change reaches the players, the librarian’s slips and the copies of the desks it is for', async () => {
    const { page } = librarian;
    await desk.folder(PROGRAMME);
    for (const work of (await programme()).works) {
      await desk.choose(work.title, 'Viola');
      for (const stage of ['printed', 'on the stands']) {
        await desk.press('move both on');
        await says(`Two parts of this work moved on: ${stage}.`);
        // The word on the ledge names the next step as soon as the shelf is read again.
        for (const { id } of work.parts) await page.locator(`[data-part="${id}"] b`).filter({ hasText: stage }).waitFor();
      }
    }
    expect((await overview()).parts.map(({ waitedFor, due, changed }) => [waitedFor.turn, due, changed])).toEqual(Array(6).fill(['nobody', null, 0]));
    const salt = partOf('Salt Road', 'Viola');
    await decide(violas.player, violas.reader, salt, LATE);
    const words = /^Measure 33.*down-bow/s;
    const since = JSON.parse(await librarian.reader.text(`/parts/${salt}/since`)) as SinceView;
    expect(since.changes.map(({ number, position, seats }) => [number, position, seats])).toEqual([['33', 1, 'all']]);
    const player = await company.enter('a viola player', await linkOf('Kenji Morozane'));
    await player.player.stand(salt);
    await player.player.sentence().filter({ hasText: 'Since the parts went out: measure 33.' }).waitFor();
    await desk.folder(PROGRAMME);
    await page.getByText('one measure changed since it went out').waitFor();
    await desk.choose('Salt Road, The Crossing', 'Viola');
    await page.locator('section.since').getByText(/down-bow/).waitFor();
    await desk.press('print a slip for each desk');
    await page.locator('body[data-printed]').waitFor();
    await page.emulateMedia({ media: 'print' });
    const slips = await page.locator('.desk-slips article').allInnerTexts();
    expect(slips.map((text) => text.split('\n')[0])).toEqual(['Desk 1, Maud Ellingrath and Kenji Morozane', 'Desk 2, Ottilie Farnbeck and Silas Wrenfield']);
    const paper = await readPdf(await page.pdf());
    await page.emulateMedia({ media: 'screen' });
    const printed = paper.map((one) => one.words).join('\n').replace(/\s+/g, ' ');
    expect(printed.match(/Salt Road, The Crossing, Viola: please change/g)).toHaveLength(2);
    expect(printed.match(/Measure 33/g)).toHaveLength(2);
    expect(slips.every((text) => words.test(text.slice(text.indexOf('Measure'))))).toBe(true);
    const prints = page.locator('section.prints');
    await choice(prints, 'copies of Viola', 'desk 2 alone');
    const [download] = await Promise.all([page.waitForEvent('download', SLOW), prints.getByRole('button', { name: 'Make one copy' }).click()]);
    const [copy] = [...(await copiesIn(download))];
    expect([copy![0], await signsOnCopy(copy![1])]).toEqual(['Salt Road, The Crossing - Viola - Desk 2', ['III', 'down', 'up']]);
  });

  it('puts the marks of every work by under the season and conductor of the programme', async () => {
    const { page } = librarian;
    await desk.folder(PROGRAMME);
    for (const [i, work] of (await programme()).works.entries()) {
      await desk.choose(work.title, 'Viola');
      const fold = page.locator('[data-fold="put-by"]');
      await fold.locator('.fold-word').click();
      const said = (label: string) => fold.getByLabel(label, { exact: true });
      await said('Season').waitFor();
      expect([await said('Ensemble').inputValue(), await said('Conductor').inputValue(), await said('Season').inputValue()]).toEqual([i ? 'Varnholm Strings' : '', 'Vera Lindqvist', '2026/27']);
      if (!i) await said('Ensemble').fill('Varnholm Strings');
      await desk.press('put by');
      await says('The marks are put by as 2026/27, under Vera Lindqvist, Varnholm Strings.');
    }
    await page.goto(`${house.origin}/archive`);
    for (const [title, kept] of [['Salt Road', 'Violin I: five marks · Viola: three marks'], ['Lantern Dance', 'Violin I: two marks · Viola: two marks'], ['Harbour Bells', 'Violin I: two marks · Viola: one mark']] as const) await page.locator('[data-set]').filter({ hasText: title }).getByText(kept).waitFor();
  });

  it('finds the set again next season on a corrected edition, and its marks stand on the same notes, the late one too', async () => {
    const { page } = librarian;
    const corrected = saltRoad().replace(/(<measure number="7"[^]*?<step>)C(<\/step>\s*<octave>5)/, '$1D$2');
    expect(corrected).not.toBe(saltRoad());
    await onShelf('Thaw', '2027/28', day(370), day(374));
    await lay([{ name: 'salt-road-2.musicxml', bytes: Buffer.from(corrected) }]);
    await says('Salt Road, The Crossing lies in the folder: two string parts.');
    await page.locator('[data-offer]').getByText('Bowings from 2026/27 under Vera Lindqvist').waitFor();
    const next = (await programme('Thaw')).works[0]!;
    const place = ({ part }: Marked, note: string) => part.measures.flatMap(({ number, notes }) => notes.filter(({ id }) => id === note).map(({ index }) => `${number}/${index}`))[0];
    const marked = (view: Marked) => view.state.ink.filter(({ superseded }) => superseded === null).map(({ mark, seats }) => JSON.stringify([place(view, mark.note), mark.value, seats])).sort();
    for (const [member, name, id, count] of [[violins, 'Violin I', 'P1', 5], [violas, 'Viola', 'P3', 3]] as const) {
      const folder = new Librarian(member.page, house.origin);
      await folder.folder('Thaw');
      await member.page.locator('[data-offer]').getByRole('button', { name: 'ink them in' }).click();
      await folder.sentence().filter({ hasText: new RegExp(`^\\s*${name}: [^.]* inked in\\.\\s*$`) }).waitFor();
      const before = await librarian.reader.part(partOf('Salt Road', name));
      const after = await librarian.reader.part(next.parts.find((part) => part.name === name)!.id);
      expect(marked(before)).toHaveLength(count);
      expect(marked(after)).toEqual(marked(before));
      const exported = await librarian.reader.text(`/parts/${after.id}/export?for=section`);
      expect(added(signsOf(corrected, id), signsOf(exported, id)).sort()).toEqual(owedSigns(after.state, after.part, null).sort());
    }
    expect(await seriousViolations(page)).toEqual([]);
    expect(company.faults).toEqual([]);
  });
});

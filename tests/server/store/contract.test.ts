import { randomBytes, randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { emptyState } from '../../../core/agreement/state.ts';
import type { Person } from '../../../server/store/people.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { askerKey, MOVED, type Ground, type Ruling } from '../../../server/store/partLog.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { smallPart } from '../../support/smallPart.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];
const NOW = new Date('2026-11-25T12:00:00.123Z');
const LATER = new Date('2026-12-25T12:00:00Z');
const known = ({ id, name }: Person) => ({ id, name });
const hash = () => new Uint8Array(randomBytes(32));

describe.each(KINDS)('the store in %s', (kind, open) => {
  let store: OneEnsemble;
  let it1: LaidOut;
  beforeAll(async () => {
    store = await open();
    it1 = await layOut(store);
  });
  afterAll(async () => {
    await store.close();
    if (kind === 'PostgreSQL') await database.drop();
  });

  describe('people', () => {
    it('a sign-in link works once, even when two use it together', async () => {
      const token = hash();
      await store.door.addLink(it1.player.id, token, LATER, null);
      const answers = await Promise.all([store.door.useLink(token, NOW), store.door.useLink(token, NOW)]);
      expect(answers.filter(Boolean)).toEqual([{ person: known(it1.player), ensemble: null, invitation: false, letter: null }]);
      expect(await store.door.useLink(token, NOW)).toBeNull();
    });

    it('a link past its time does nothing', async () => {
      const token = hash();
      await store.door.addLink(it1.player.id, token, NOW, store.ensemble);
      expect(await store.door.useLink(token, LATER)).toBeNull();
    });

    it('a session holds until it is revoked or its time is over', async () => {
      const token = hash();
      const id = await store.door.openSession(it1.player.id, token, LATER, null, { way: 'link', browser: 'Firefox', device: 'tablet', at: NOW });
      expect(await store.door.session(token, NOW)).toEqual({ begun: NOW, used: NOW, proven: NOW, id, person: known(it1.player), belongings: [{ ensemble: { id: store.ensemble, name: 'Varnholm Strings' }, librarian: false, deputy: false }], only: null, open: null });
      expect(await store.door.session(token, new Date('2027-01-01'))).toBeNull();
      await store.door.revoke(id, NOW);
      expect(await store.door.session(token, NOW)).toBeNull();
      expect(await store.door.session(hash(), NOW)).toBeNull();
    });

    it('a hand is kept for one person, changed, and forgotten', async () => {
      const { player, principal } = it1;
      expect(await store.door.hand(player.id)).toBeNull();
      await store.door.setHand(player.id, { factor: 0.9, shortFourth: true });
      await store.door.setHand(player.id, { factor: 0.95, shortFourth: false });
      expect(await store.door.hand(player.id)).toEqual({ factor: 0.95, shortFourth: false });
      expect(await store.door.hand(principal.id)).toBeNull();
      await store.door.setHand(player.id, null);
      await store.door.setHand(player.id, null);
      expect(await store.door.hand(player.id)).toBeNull();
    });

    it('memberships say where a person sits and whether they lead', async () => {
      expect((await store.people.memberships(it1.principal.id)).map(({ role, seat }) => [role, seat])).toEqual([['principal', '1o']]);
      expect((await store.people.memberships(it1.player.id)).map(({ role, seat }) => [role, seat])).toEqual([['player', '1i']]);
      expect(await store.people.memberships(it1.guest.id)).toEqual([]);
    });
  });

  describe('attention', () => {
    it('what was seen never goes back, and is one’s own', async () => {
      const { player, principal, part } = it1;
      expect(await store.attention.seen(player.id)).toEqual(new Map());
      expect([await store.attention.see(player.id, part, 4), await store.attention.see(player.id, part, 2), await store.attention.see(player.id, randomUUID(), 9)]).toEqual([true, true, false]);
      expect(await store.attention.seen(player.id)).toEqual(new Map([[part, 4]]));
      expect(await store.attention.seen(principal.id)).toEqual(new Map());
    });

    it('an address is kept, changed and forgotten; whoever gave one is written to', async () => {
      const { player, part } = it1;
      const { attention } = store;
      expect(await attention.letters(player.id)).toBeNull();
      await attention.setLetters(player.id, { address: 'old@orchestra.example', language: 'en' });
      await attention.setLetters(player.id, { address: 'mona@orchestra.example', language: 'it' });
      expect(await attention.letters(player.id)).toEqual({ address: 'mona@orchestra.example', language: 'it' });
      await attention.tell(player.id, new Map([[part, 7]]), { sentAt: NOW });
      const known = (await attention.correspondents()).find(({ person }) => person === player.id);
      expect(known).toEqual({ person: player.id, name: player.name, address: 'mona@orchestra.example', language: 'it', sentAt: NOW, remindedAt: null, known: new Map([[part, 7]]) });
      await attention.setLetters(player.id, null);
      await attention.setLetters(player.id, null);
      expect([await attention.letters(player.id), (await attention.correspondents()).some(({ person }) => person === player.id)]).toEqual([null, false]);
    });
  });

  describe('sections', () => {
    it('a name is given once', async () => {
      expect(await store.sections.add('Basses', 'double-bass')).toMatchObject({ name: 'Basses', seats: [], principal: null, settings: {} });
      expect(await store.sections.add('Basses', 'cello')).toBeNull();
    });

    it('a plan replaces the one before, with empty places and a principal who stands', async () => {
      const { id } = (await store.sections.add('Violas', 'viola'))!;
      expect(await store.sections.seat(id, { seats: [{ seat: '1o', person: it1.guest.id }, { seat: '1i', person: it1.player.id }], principal: it1.guest.id })).toBe(true);
      expect(await store.sections.seat(id, { seats: [{ seat: '1o', person: it1.player.id }, { seat: '1i', person: null }], principal: it1.guest.id })).toBe(true);
      const guest = { id: it1.guest.id, name: it1.guest.name };
      expect(await store.sections.byId(id)).toMatchObject({ seats: [{ seat: '1o', person: { id: it1.player.id, name: it1.player.name } }, { seat: '1i', person: null }], principal: guest });
    });

    it('a plan with somebody unknown, or somebody twice, changes nothing', async () => {
      const before = await store.sections.byId(it1.section);
      expect(await store.sections.seat(it1.section, { seats: [{ seat: '1o', person: 'nobody' }], principal: null })).toBe(false);
      expect(await store.sections.seat(it1.section, { seats: [{ seat: '1o', person: it1.guest.id }, { seat: '1i', person: it1.guest.id }], principal: null })).toBe(false);
      expect(await store.sections.seat('nowhere', { seats: [], principal: null })).toBe(false);
      expect(await store.sections.byId(it1.section)).toEqual(before);
    });

    it('settings are kept as they were given', async () => {
      const settings = { staggered: { seconds: 0.5 }, slow: null };
      expect(await store.sections.set(it1.section, settings)).toBe(true);
      expect((await store.sections.byId(it1.section))?.settings).toEqual(settings);
      expect(await store.sections.set('nowhere', {})).toBe(false);
    });
  });

  describe('library', () => {
    it('the source comes back byte for byte, zero bytes and all', async () => {
      const bytes = new Uint8Array(randomBytes(70_000));
      const work = (await store.library.addWork(it1.programme, { title: 'Bytes', composer: '' }, { bytes, fileName: 'été (1).mxl', by: it1.librarian.id, at: NOW }, [{ content: smallPart('P7', 'Viola'), section: null }]))!;
      const part = (await store.library.part(work.parts[0]!.id))!;
      const source = (await store.library.source(part.edition))!;
      expect(Buffer.compare(Buffer.from(source.bytes), Buffer.from(bytes))).toBe(0);
      expect(source.fileName).toBe('été (1).mxl');
      expect(part.content).toEqual(smallPart('P7', 'Viola'));
    });

    it('a work for a programme that is not there leaves nothing', async () => {
      const before = await store.library.programmes();
      expect(await store.library.addWork('nowhere', { title: 'X', composer: '' }, { bytes: new Uint8Array(1), fileName: 'x', by: it1.librarian.id, at: NOW }, [{ content: smallPart(), section: null }])).toBeNull();
      expect(await store.library.programmes()).toEqual(before);
    });

    it('a corrected edition renews parts that are there, adds new ones, and keeps ids', async () => {
      const edition = (name: string) => ({ bytes: new TextEncoder().encode(name), fileName: name, by: it1.librarian.id, at: new Date(NOW.getTime() + (name === 'b.xml' ? 1000 : 0)) });
      const first = (await store.library.addWork(it1.programme, { title: 'Twice', composer: '' }, edition('a.xml'), [{ content: smallPart(), section: it1.section }]))!;
      const id = first.parts[0]!.id;
      const second = await store.library.addEdition(first.id, edition('b.xml'), [{ id, content: smallPart('P1', 'Violin I', 6), measures: null }], [{ content: smallPart('P2', 'Violin II'), section: null }]);
      expect(second.fileName).toBe('b.xml');
      expect(second.parts.map(({ name, measures }) => [name, measures])).toEqual([['Violin I', 6], ['Violin II', 4]]);
      expect(second.parts[0]).toMatchObject({ id, section: { id: it1.section } });
      expect((await store.library.part(id))!.revision).toBe(2);
      expect((await store.library.partsOf(first.id)).map((part) => part.content.name)).toEqual(['Violin I', 'Violin II']);
    });

    it('the music before a corrected edition is kept, with what became of its marks, and a row says where measures are', async () => {
      const edition = (name: string) => ({ bytes: new TextEncoder().encode(name), fileName: name, by: it1.librarian.id, at: NOW });
      const work = (await store.library.addWork(it1.programme, { title: 'Thrice', composer: '' }, edition('a.xml'), [{ content: smallPart(), section: it1.section }]))!;
      const id = work.parts[0]!.id;
      expect(await store.library.earlier(id)).toEqual([]);
      const first = (await store.library.part(id))!.edition;
      await store.library.addEdition(work.id, edition('b.xml'), [{ id, content: smallPart('P1', 'Violin I', 6), measures: [1, 2, 4, 5] }], []);
      expect(await store.library.earlier(id)).toEqual([{ revision: 1, edition: first, fileName: 'a.xml', settled: {} }]);
      expect(await store.library.earlierMusic(id, 1)).toEqual(smallPart());
      expect(await store.library.earlierMusic(id, 2)).toBeNull();
      const log = (await store.log.entries(id, 0, 10))!;
      expect(log.head).toBe(1);
      expect(log.entries).toMatchObject([{ seq: 1, name: 'layOver', by: it1.librarian.id, byName: it1.librarian.name, at: NOW.toISOString(), events: [{ type: 'laidOver', measures: [1, 2, 4, 5] }] }]);
      const put = { how: 'put', by: it1.librarian.id, name: it1.librarian.name, at: NOW.toISOString() } as const;
      const settle = (revision: number, key: string, settled: typeof put | null) => store.library.settle(id, revision, key, settled);
      expect([await settle(1, "a ' b", put), await settle(1, 'c', put), await settle(7, 'c', put)]).toEqual([true, true, false]);
      expect((await store.library.earlier(id))[0]!.settled).toEqual({ "a ' b": put, c: put });
      expect(await settle(1, 'c', null)).toBe(true);
      await store.library.addEdition(work.id, edition('c.xml'), [{ id, content: smallPart('P1', 'Violin I', 5), measures: null }], []);
      expect(await store.library.earlier(id)).toMatchObject([{ revision: 2, fileName: 'b.xml', settled: {} }, { revision: 1, fileName: 'a.xml', settled: { "a ' b": put } }]);
      expect(await store.library.earlierMusic(id, 2)).toEqual(smallPart('P1', 'Violin I', 6));
      expect((await store.log.heads([id])).get(id)).toBe(1);
      expect(await store.log.place(id)).toEqual({ head: 1, revision: 3, rewritten: 0 });
    });

    it('programmes show their days and works', async () => {
      const shown = (await store.library.programmes()).find((programme) => programme.id === it1.programme)!;
      expect(shown).toMatchObject({ title: 'Spring', season: '', conductor: '', days: [{ kind: 'rehearsal', date: '2027-03-01', time: null, words: '' }], deadlines: {}, seatings: [] });
      expect(shown.works[0]).toMatchObject({ title: 'Spring', composer: 'T. Holmwood', fileName: 'spring.musicxml', parts: [{ instrument: 'violin', measures: 4, stage: 'pulled', locked: false, open: 0, head: 0 }] });
    });

    it('a programme is written anew, and keeps its works', async () => {
      const { programme, work } = await layOut(store);
      const days = [{ kind: 'rehearsal' as const, date: '2027-03-02', time: '10:00', words: 'Hall 2' }, { kind: 'concert' as const, date: '2027-03-05', time: null, words: '' }];
      const anew = { title: 'Thaw', season: '2026/27', conductor: 'Vera Lindqvist', days, deadlines: { inkedIn: '2027-02-10', onStands: null } };
      expect(await store.library.setProgramme(programme, anew)).toBe(true);
      expect(await store.library.programme(programme)).toEqual({ id: programme, ...anew, works: [await store.library.work(work)], seatings: [] });
      expect([await store.library.setProgramme('nowhere', anew), await store.library.programme('nowhere')]).toEqual([false, null]);
    });

    it('a section sits otherwise in one programme, and nowhere else', async () => {
      const { programme, section, part, principal, player, guest } = await layOut(store);
      const who = ({ id, name }: LaidOut['guest']) => ({ id, name });
      const usual = await store.sections.byId(section);
      const seats = [{ seat: '1o', person: guest.id }, { seat: '1i', person: player.id }, { seat: '2o', person: null }];
      expect(await store.sections.seatFor(programme, section, { seats, principal: guest.id })).toBe(true);
      const sits = { seats: [{ seat: '1o', person: who(guest) }, { seat: '1i', person: who(player) }, { seat: '2o', person: null }], principal: who(guest) };
      expect(await store.sections.ofPart(part)).toEqual({ ...usual, ...sits });
      expect((await store.library.programme(programme))!.seatings).toEqual([{ section, ...sits }]);
      expect(await store.sections.byId(section)).toEqual(usual);
      const elsewhere = (await store.library.addWork((await store.library.addProgramme({ title: 'Other', season: '', conductor: '', days: [], deadlines: {} })).id, { title: 'O', composer: '' }, { bytes: new Uint8Array(1), fileName: 'o', by: it1.librarian.id, at: NOW }, [{ content: smallPart(), section }]))!;
      expect(await store.sections.ofPart(elsewhere.parts[0]!.id)).toEqual(usual);
      expect(await store.sections.seatFor(programme, section, { seats: [{ seat: '1o', person: principal.id }], principal: null })).toBe(true);
      expect((await store.sections.ofPart(part))!.seats).toEqual([{ seat: '1o', person: who(principal) }]);
      expect(await store.sections.seatFor(programme, section, null)).toBe(true);
      expect(await store.sections.ofPart(part)).toEqual(usual);
    });

    it('a plan for a programme with somebody unknown, or somebody twice, changes nothing', async () => {
      const { programme, section, part, guest } = await layOut(store);
      const plan = { seats: [{ seat: '1o', person: guest.id }], principal: null };
      await store.sections.seatFor(programme, section, plan);
      const before = await store.sections.ofPart(part);
      const twice = { seats: [{ seat: '1o', person: guest.id }, { seat: '1i', person: guest.id }], principal: null };
      const unknown = { seats: [{ seat: '1o', person: 'nobody' }], principal: null };
      expect([await store.sections.seatFor(programme, section, twice), await store.sections.seatFor(programme, section, unknown), await store.sections.seatFor('nowhere', section, plan), await store.sections.seatFor(programme, 'nowhere', plan)]).toEqual([false, false, false, false]);
      expect(await store.sections.ofPart(part)).toEqual(before);
    });

    it('a part goes to a section and off it again', async () => {
      const work = (await store.library.addWork(it1.programme, { title: 'Moves', composer: '' }, { bytes: new Uint8Array(1), fileName: 'm', by: it1.librarian.id, at: NOW }, [{ content: smallPart(), section: null }]))!;
      const id = work.parts[0]!.id;
      expect(await store.library.assign(id, it1.section)).toBe(true);
      expect(await store.sections.parts(it1.section)).toContain(id);
      expect((await store.sections.ofPart(id))?.id).toBe(it1.section);
      expect(await store.library.assign(id, 'nowhere')).toBe(false);
      expect(await store.library.assign(id, null)).toBe(true);
      expect(await store.sections.ofPart(id)).toBeNull();
    });

    it('a part that goes to players of another instrument is for that instrument, and nothing else of it changes', async () => {
      const content = smallPart('P1', 'Violin III');
      const { parts } = (await store.library.addWork(it1.programme, { title: 'Lower', composer: '' }, { bytes: new Uint8Array(1), fileName: 'm', by: it1.librarian.id, at: NOW }, [{ content, section: null }]))!;
      const { id } = (await store.sections.add(`Violas ${randomUUID()}`, 'viola'))!;
      expect(await store.library.assign(parts[0]!.id, id)).toBe(true);
      expect((await store.library.part(parts[0]!.id))!.content).toEqual({ ...content, instrument: 'viola' });
      expect((await store.library.work((await store.library.part(parts[0]!.id))!.work.id))!.parts[0]).toMatchObject({ instrument: 'viola', section: { id } });
    });

    it('further files of a work come with it or later, their parts behind those that are there', async () => {
      const file = (name: string) => ({ edition: { bytes: new TextEncoder().encode(name), fileName: name, by: it1.librarian.id, at: NOW }, parts: [{ content: smallPart('P1', name), section: null }] });
      const [a, b, c] = [file('A'), file('B'), file('C')] as const;
      const work = (await store.library.addWork(it1.programme, { title: 'Three', composer: '' }, a.edition, a.parts, [b]))!;
      const more = (await store.library.addFiles(work.id, [c]))!;
      expect(more.parts.map(({ name }) => name)).toEqual(['A', 'B', 'C']);
      const sources = await Promise.all((await store.library.partsOf(work.id)).map(({ edition }) => store.library.source(edition)));
      expect(sources.map((source) => new TextDecoder().decode(source!.bytes))).toEqual(['A', 'B', 'C']);
      expect(await store.library.addFiles('nowhere', [c])).toBeNull();
    });

    it('what is not there is null, whatever is asked', async () => {
      for (const id of ['nowhere', '', "'; drop table part; --", randomUUID()]) {
        expect(await store.library.part(id)).toBeNull();
        expect(await store.library.work(id)).toBeNull();
        expect(await store.library.source(id)).toBeNull();
        expect(await store.log.entries(id, 0, 10)).toBeNull();
        expect(await store.people.byId(id)).toBeNull();
      }
    });
  });

  describe('the log', () => {
    const entry = (seq: number, by: LaidOut['principal'], operation: string = randomUUID()) => ({ seq, operation, name: 'lock', input: { text: 'a \u0000 b \ud800' }, events: [{ type: 'locked' as const }], by: by.id, byName: by.name, at: NOW.toISOString() });
    const ruling = (more: Partial<Ruling>): Ruling => ({ entries: [], refused: [], shelf: { stage: 'roundSection', locked: true, open: 2 }, snapshot: null, ...more });
    const newPart = async () => (await layOut(store)).part;

    it('rows come back as they were written, in order, from any place', async () => {
      const part = await newPart();
      const rows = [entry(1, it1.principal), entry(2, it1.player), entry(3, it1.principal)];
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: rows }));
      expect(await store.log.entries(part, 0, 10)).toEqual({ head: 3, entries: rows });
      expect(await store.log.entries(part, 1, 1)).toEqual({ head: 3, entries: [rows[1]] });
      expect(await store.log.entries(part, 3, 10)).toEqual({ head: 3, entries: [] });
      expect(await store.log.heads([part, 'nowhere'])).toEqual(new Map([[part, 3]]));
      expect(await store.log.place(part)).toEqual({ head: 3, revision: 1, rewritten: 0 });
      expect(await store.log.place('nowhere')).toBeNull();
    });

    it('who decides from an older place is told that the part has moved, and nothing is decided', async () => {
      const part = await newPart();
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: [entry(1, it1.principal)] }));
      let asked = false;
      const decide = () => ((asked = true), ruling({}));
      expect(await store.log.commit(part, { head: 0, revision: 1 }, [], [], decide)).toBe(MOVED);
      expect(await store.log.commit(part, { head: 1, revision: 2 }, [], [], decide)).toBe(MOVED);
      expect(await store.log.commit('nowhere', { head: 0, revision: 1 }, [], [], decide)).toBeNull();
      expect(asked).toBe(false);
    });

    it('of two who write after the same row one is let through', async () => {
      const part = await newPart();
      const write = () => store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: [entry(1, it1.principal)] }));
      const answers = await Promise.all([write(), write(), write(), write()]);
      expect(answers.filter((answer) => answer === MOVED)).toHaveLength(3);
      expect((await store.log.entries(part, 0, 10))?.head).toBe(1);
    });

    it('a decision that breaks leaves nothing written', async () => {
      const part = await newPart();
      const broken = store.log.commit(part, { head: 0, revision: 1 }, [], [], () => {
        throw new Error('broken');
      });
      await expect(broken).rejects.toThrow('broken');
      expect(await store.log.entries(part, 0, 10)).toEqual({ head: 0, entries: [] });
    });

    it('the shelf shows what the last ruling came to', async () => {
      const { part, work } = await layOut(store);
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: [entry(1, it1.principal)] }));
      expect((await store.library.work(work))!.parts[0]).toMatchObject({ stage: 'roundSection', locked: true, open: 2, head: 1 });
    });

    it('the ground says who the askers are at this moment', async () => {
      const { part, section, principal, player, librarian, guest } = await layOut(store);
      const token = hash();
      const session = await store.door.openSession(player.id, token, new Date(Date.now() + 60_000), null);
      const askers = [...[principal, librarian, guest].map((person) => ({ person: person.id, session: null })), { person: player.id, session }, { person: 'nobody', session: null }, { person: player.id, session: 'none' }, { person: guest.id, session }];
      const look = async () => {
        let ground: Ground | undefined;
        await store.log.commit(part, { head: 0, revision: 1 }, askers, [], (seen) => ((ground = seen), ruling({})));
        return { seats: ground!.seats, roles: askers.map((asker) => ground!.actors.get(askerKey(asker))?.roles) };
      };
      expect(await look()).toEqual({ seats: ['1o', '1i', '2o', '2i'], roles: [['principal'], ['librarian'], [], ['player'], undefined, undefined, undefined] });
      await store.sections.seat(section, { seats: [{ seat: '1o', person: player.id }], principal: player.id });
      expect(await look()).toEqual({ seats: ['1o'], roles: [[], ['librarian'], [], ['principal'], undefined, undefined, undefined] });
      await store.door.revoke(session, new Date());
      expect((await look()).roles[3]).toBeUndefined();
    });

    it('the ground says who sits in the part’s own programme: a deputy plays, who is away does not', async () => {
      const { part, programme, section, principal, player, librarian, guest } = await layOut(store);
      const askers = [principal, player, librarian, guest].map((person) => ({ person: person.id, session: null }));
      const look = async () => {
        let ground: Ground | undefined;
        await store.log.commit(part, { head: 0, revision: 1 }, askers, [], (seen) => ((ground = seen), ruling({})));
        return { seats: ground!.seats, actors: askers.map((asker) => [ground!.actors.get(askerKey(asker))?.roles, ground!.actors.get(askerKey(asker))?.seat]) };
      };
      await store.sections.seatFor(programme, section, { seats: [{ seat: '1o', person: principal.id }, { seat: '1i', person: guest.id }, { seat: '2o', person: null }], principal: principal.id });
      expect(await look()).toEqual({ seats: ['1o', '1i', '2o'], actors: [[['principal'], '1o'], [[], null], [['librarian'], null], [['player'], '1i']] });
      await store.sections.seatFor(programme, section, null);
      expect(await look()).toEqual({ seats: ['1o', '1i', '2o', '2i'], actors: [[['principal'], '1o'], [['player'], '1i'], [['librarian'], null], [[], null]] });
    });

    it('with nobody asking the ground still knows the seats', async () => {
      const { part } = await layOut(store);
      let ground: Ground | undefined;
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], (seen) => ((ground = seen), ruling({})));
      expect(ground).toEqual({ seats: ['1o', '1i', '2o', '2i'], actors: new Map(), known: new Map() });
    });

    it('what was answered before is known again, written or refused, from whichever part', async () => {
      const [part, other] = [await newPart(), await newPart()];
      const row = entry(1, it1.principal);
      const refusal = { operation: randomUUID(), part, name: 'adopt', by: it1.player.id, at: NOW.toISOString(), refusal: { code: 'NOT_YOUR_ROLE' as const, facts: { roles: 'principal' } } };
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: [row], refused: [refusal] }));
      let known: Ground['known'] = new Map();
      await store.log.commit(other, { head: 0, revision: 1 }, [], [row.operation, refusal.operation, randomUUID()], (ground) => ((known = ground.known), ruling({})));
      expect(known).toEqual(new Map<string, unknown>([[row.operation, { part, entry: row }], [refusal.operation, refusal]]));
    });

    it('the latest snapshot of the asked protocol is found', async () => {
      const part = await newPart();
      const state = (seq: number) => ({ ...emptyState(), seq });
      expect(await store.log.snapshot(part, PROTOCOL)).toBeNull();
      await store.log.commit(part, { head: 0, revision: 1 }, [], [], () => ruling({ entries: [entry(1, it1.principal)], snapshot: state(1) }));
      await store.log.commit(part, { head: 1, revision: 1 }, [], [], () => ruling({ entries: [entry(2, it1.principal)], snapshot: state(2) }));
      expect(await store.log.snapshot(part, PROTOCOL)).toEqual(state(2));
      expect(await store.log.snapshot(part, PROTOCOL + 1)).toBeNull();
    });
  });
});

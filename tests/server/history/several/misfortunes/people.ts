import { setTimeout as wait } from 'node:timers/promises';
import { PROTOCOL } from '../../../../../core/agreement/wire/socket.ts';
import { caller, signIn, type SignedIn } from '../../library.ts';
import { Person } from '../../person.ts';
import { steady } from '../../record/record.ts';
import { viewOf, type House } from '../furnish.ts';
import { held, type Misfortune, type Scene } from './misfortune.ts';

const HEARTBEAT = 5000;
/** Beyond a beat: the question to the database, and a busy machine. Chosen, not measured. */
const SLACK = 4000;

/** What happens to people: pages loaded anew or killed, seats taken away, sessions ended, pages of another age. */
export function toPeople(scene: Scene): Misfortune[] {
  const { houses, rooms, luck, away } = scene;

  /** Somebody who only plays, and whom nothing happens to just now. */
  const player = (): { house: House; person: string } | null => {
    const house = luck.pick(houses);
    const free = house.players.slice(1).filter(({ id }) => !away.has(id));
    return free.length ? { house, person: luck.pick(free).id } : null;
  };
  const onPlayer = (work: (house: House, person: string) => Promise<void>) => () => {
    const found = player();
    return found && { at: found.person, over: held(away, found.person, () => work(found.house, found.person)) };
  };
  const seated = new Map(houses.map((house) => [house, Promise.resolve<unknown>(0)]));

  /** Changes of one section's seats one after another: each writes the whole seating. */
  async function unseat(house: House, person: string): Promise<void> {
    const turn = seated.get(house)!.then(() => empty(house, person), () => empty(house, person));
    seated.set(house, turn);
    await turn;
  }

  async function empty(house: House, person: string): Promise<void> {
    const url = `/api/sections/${house.section}/seating`;
    const put = (body: unknown) => caller(scene.address, house.librarian.cookie)('PUT', url, body);
    await put({ ...house.seating, seats: house.seating.seats.map((place) => (place.person === person ? { ...place, person: null } : place)) });
    const from = await scene.heads();
    await wait(1500);
    const to = await scene.heads();
    await put(house.seating);
    for (const part of house.parts) scene.note({ k: 'shutOut', why: 'unseated', person, part, from: from.get(part)! + 1, to: to.get(part)! });
  }

  async function signOut(house: House, person: string): Promise<void> {
    const before = scene.lines.get(person);
    await caller(scene.address, scene.signedIn.get(person)!.cookie)('POST', '/api/sign-out');
    const t = steady();
    const from = await scene.heads();
    const cut = () => scene.lines.get(person) !== before;
    while (before?.status === 'live' && !cut() && steady() < t + 60_000) await wait(50);
    const end = cut() ? scene.lines.get(person)!.t : steady();
    if (before?.status === 'live' && end > t) scene.note({ k: 'cutOff', person, ms: end - t, most: HEARTBEAT + SLACK + scene.troubles.within(t - 1000, end) });
    await wait(1500);
    const to = await scene.heads();
    for (const part of house.parts) scene.note({ k: 'shutOut', why: 'signedOut', person, part, from: from.get(part)! + 1, to: to.get(part)! });
    const again = await comeIn(house, person);
    scene.signedIn.set(person, again);
    rooms.find(({ people }) => people.includes(person))!.tell({ say: 'cookie', person, cookie: again.cookie });
  }

  /** A link works once: where the answer to it was lost, there has to be another one. */
  async function comeIn(house: House, person: string): Promise<SignedIn> {
    for (;;) {
      const { link } = await caller(scene.address, house.librarian.cookie)<{ link: string }>('POST', `/api/people/${person}/link`);
      const done = await signIn(scene.address(), link).catch(() => null);
      if (done?.id) return done;
      await wait(300);
    }
  }

  async function oldPage(house: House): Promise<void> {
    const who = luck.pick(house.players);
    const part = luck.pick(house.parts);
    const cookie = scene.signedIn.get(who.id)!;
    const page = new Person(cookie, scene.address(), [await viewOf(scene.address(), cookie, part)]);
    page.load(PROTOCOL - 1);
    const { session } = page.open[0]!;
    const op = session.submit('comment', { id: crypto.randomUUID(), measure: 1, text: 'From a page of last year.' });
    const end = steady() + 30_000;
    while (session.getSnapshot().status !== 'oldProgram' && steady() < end) await wait(50);
    const { status, waiting } = session.getSnapshot();
    // A server that was killed meanwhile tells nobody anything.
    if (status === 'oldProgram') scene.note({ k: 'oldPage', t: steady(), op, part, status, waiting: waiting.map(({ operation }) => operation) });
    page.close();
  }

  return [
    { kind: 'page loaded anew', often: 3, strike: () => {
      const room = luck.pick(rooms);
      const person = luck.pick(room.people);
      room.tell({ say: 'reload', person });
      return { at: person, over: Promise.resolve() };
    } },
    { kind: 'ten people killed', often: 1, strike: () => {
      const room = luck.pick(rooms);
      if (room.people.some((id) => away.has(id))) return null;
      room.people.forEach((id) => away.add(id));
      return { at: 'a roomful', over: room.kill().finally(() => room.people.forEach((id) => away.delete(id))) };
    } },
    { kind: 'seat taken away', often: 1, strike: onPlayer(unseat) },
    { kind: 'signed out', often: 1, strike: onPlayer(signOut) },
    { kind: 'page of another age', often: 1, strike: () => ({ at: 'a page', over: oldPage(luck.pick(houses)) }) },
  ];
}

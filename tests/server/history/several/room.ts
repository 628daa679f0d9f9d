import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { chance } from '../../../support/chance.ts';
import { nextAct } from '../acts.ts';
import { recorder, steady } from '../record/record.ts';
import type { FromRoom, RoomBrief, ToRoom } from './brief.ts';
import { diskQueue } from './diskQueue.ts';
import { openPage, type Page } from './page.ts';

/** A process full of people at their stands, started by `rooms.ts`: `room.ts <brief> <how many times it was started before>`. */
const [, , briefPath, started] = process.argv;
const room = JSON.parse(readFileSync(briefPath!, 'utf8')) as RoomBrief;
const luck = chance(room.seed + 7919 * Number(started));
const note = recorder(room.record);
const queue = diskQueue(room.queues);
const say = (message: FromRoom) => process.connected && process.send?.(message);

/** How long everybody is waited for when all is to be quiet. */
const PATIENCE = 60_000;
const PRY = 0.002;

const cookies = new Map(room.people.map(({ id, cookie }) => [id, cookie]));
const pages = new Map<string, Page>();
let opened = 0;
let resting = false;
let acknowledged = 0;
let sample: Extract<FromRoom, { say: 'acknowledged' }>['sample'] = null;

function load(id: string): void {
  const who = room.people.find((one) => one.id === id)!;
  const page = openPage(`${started}.${++opened} ${id}`, who, cookies.get(id)!, {
    room,
    queue,
    note,
    onAcknowledged(one) {
      acknowledged += 1;
      if (luck.happens(0.2)) sample = one;
    },
    onStatus: (status) => void say({ say: 'status', person: id, status, t: steady() }),
  });
  pages.set(id, page);
}

function reload(id: string): void {
  pages.get(id)!.close();
  load(id);
}

async function live(id: string, leads: boolean): Promise<void> {
  const [least, most] = room.pause;
  for (;;) {
    await wait(least + luck.below(most - least));
    if (resting) return;
    const page = pages.get(id)!;
    const { part, session, act } = luck.pick(page.open);
    const snapshot = session.getSnapshot();
    if (snapshot.waiting.length < room.ahead) act(nextAct(snapshot.state, room.parts[part]!, room.seats, leads, luck));
    if (luck.happens(PRY)) void page.pry();
  }
}

async function rest(): Promise<void> {
  resting = true;
  const end = performance.now() + PATIENCE;
  const all = () => [...pages.values()].every((page) => page.quiet());
  while (!all() && performance.now() < end) await wait(100);
  say({ say: 'rested', quiet: all() });
}

process.on('message', (message: ToRoom) => {
  if (message.say === 'reload') reload(message.person);
  if (message.say === 'cookie') {
    cookies.set(message.person, message.cookie);
    reload(message.person);
  }
  if (message.say === 'rest') void rest();
  if (message.say === 'end') {
    pages.forEach((page) => page.stand());
    say({ say: 'ended' });
    process.exit(0);
  }
});
process.on('disconnect', () => process.exit(0));

for (const { id } of room.people) load(id);
for (const { id, leads } of room.people) void live(id, leads);
setInterval(() => {
  say({ say: 'acknowledged', count: acknowledged, sample });
  acknowledged = 0;
  sample = null;
}, 200);
say({ say: 'ready' });

import { fork, type ChildProcess } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FromRoom, RoomBrief, ToRoom } from './brief.ts';

export interface Room {
  people: string[];
  tell(message: ToRoom): void;
  /** kill -9, then begun again with what its people had kept. */
  kill(): Promise<void>;
  rest(): Promise<boolean>;
  end(): Promise<void>;
}

export interface RoomListener {
  acknowledged(count: number, sample: { op: string; part: string; seq: number; person: string } | null): void;
  status(person: string, status: string, t: number): void;
}

/** A process full of people; `folder` keeps what it was told. A cookie that was exchanged since is told again after a kill. */
export async function openRoom(folder: string, index: number, brief: RoomBrief, listener: RoomListener): Promise<Room> {
  const path = join(folder, `room-${index}.json`);
  const now = structuredClone(brief);
  let child: ChildProcess;
  let started = 0;
  const waiting = new Map<FromRoom['say'], ((message: FromRoom) => void)[]>();

  const next = <Say extends FromRoom['say']>(say: Say): Promise<Extract<FromRoom, { say: Say }>> =>
    new Promise((resolve) => waiting.set(say, [...(waiting.get(say) ?? []), resolve as (message: FromRoom) => void]));

  async function start(): Promise<void> {
    writeFileSync(path, JSON.stringify(now));
    const ready = next('ready');
    child = fork(join(import.meta.dirname, 'room.ts'), [path, String(started++)], { execArgv: ['--import', 'tsx'], stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
    child.on('message', (message: FromRoom) => {
      if (message.say === 'acknowledged') listener.acknowledged(message.count, message.sample);
      if (message.say === 'status') listener.status(message.person, message.status, message.t);
      const ears = waiting.get(message.say) ?? [];
      waiting.delete(message.say);
      for (const ear of ears) ear(message);
    });
    await ready;
  }

  const tell = (message: ToRoom) => {
    if (message.say === 'cookie') now.people.find(({ id }) => id === message.person)!.cookie = message.cookie;
    if (child.connected) child.send(message);
  };
  await start();
  process.once('exit', () => child.kill('SIGKILL'));
  return {
    people: brief.people.map(({ id }) => id),
    tell,
    async kill() {
      const gone = new Promise((resolve) => child.once('exit', resolve));
      child.kill('SIGKILL');
      await gone;
      await start();
    },
    async rest() {
      const rested = next('rested');
      tell({ say: 'rest' });
      return (await rested).quiet;
    },
    async end() {
      const gone = new Promise((resolve) => child.once('exit', resolve));
      tell({ say: 'end' });
      await gone;
    },
  };
}

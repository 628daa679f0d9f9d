import { z } from 'zod';
import type { StaggerProblem } from '../../core/bowing/stagger/problem.ts';
import { BadInput } from './command.ts';
import { jsonOf } from './scoreFile.ts';

const seconds = z.number().nonnegative();
const Instant = z.object({
  time: seconds,
  onBarline: z.boolean(),
  onBeat: z.boolean(),
  subdivision: z.union([z.string(), z.number()]),
  weight: z.number().nonnegative(),
});
const Player = z.object({
  id: z.string().min(1),
  desk: z.int().positive(),
  seat: z.enum(['outside', 'inside']),
  limit: z.number().positive(),
  comfortable: z.number().positive(),
  shifts: z.array(z.int().nonnegative()),
});
const Direction = z.enum(['down', 'up']);
const File = z.object({
  instants: z.array(Instant).max(2000),
  duration: z.number().positive().max(3600),
  players: z.array(Player).min(1).max(40),
  start: Direction,
  end: Direction.nullable(),
});

const place = (path: readonly PropertyKey[]) => path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('').replace(/^\./, '') || 'the whole';

function wrongIn({ instants, duration, players }: StaggerProblem): string | undefined {
  for (const [i, { time }] of instants.entries()) {
    if (time > duration) return `instants[${i}].time is ${time} s, after the end of the passage at ${duration} s: leave that instant out or lengthen the passage.`;
    if (i > 0 && time <= instants[i - 1]!.time) return `instants[${i}].time is ${time} s, not after the ${instants[i - 1]!.time} s before it: list every instant once, in order of time.`;
  }
  for (const [p, player] of players.entries()) {
    const far = player.shifts.findIndex((shift) => shift >= instants.length);
    if (far >= 0) return `players[${p}].shifts[${far}] is ${player.shifts[far]}, but the instants are 0 to ${instants.length - 1}: name one of them.`;
    const same = players.findIndex((other) => other.id === player.id || (other.desk === player.desk && other.seat === player.seat));
    if (same < p) return `players[${p}] has the id or the seat of players[${same}] (desk ${player.desk}, ${player.seat}): give each player an id and a seat of their own.`;
  }
  return undefined;
}

/** Reads PLAN.json. Throws BadInput with the place of the first fault and what to do. */
export async function readStaggerFile(path: string): Promise<StaggerProblem> {
  const parsed = File.safeParse(await jsonOf(path));
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new BadInput(`${path}: ${place(issue!.path)}: ${issue!.message}. Correct that value.`);
  }
  const wrong = wrongIn(parsed.data);
  if (wrong) throw new BadInput(`${path}: ${wrong}`);
  return parsed.data;
}

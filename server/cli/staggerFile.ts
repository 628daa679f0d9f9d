import { z } from 'zod';
import type { StaggerProblem } from '../../core/bowing/stagger/problem.ts';

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

/** Bad input: where it is and what to do. */
export interface BadPlan {
  code: 'NOT_JSON' | 'BAD_VALUE' | 'OUT_OF_ORDER' | 'UNKNOWN_INSTANT' | 'SEAT_TAKEN';
  text: string;
}

const place = (path: readonly PropertyKey[]) => path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('').replace(/^\./, '') || 'the whole';

function wrongIn({ instants, duration, players }: StaggerProblem): BadPlan | undefined {
  for (const [i, { time }] of instants.entries()) {
    if (time > duration) return { code: 'OUT_OF_ORDER', text: `instants[${i}].time is ${time} s, after the end of the passage at ${duration} s: leave that instant out or lengthen the passage.` };
    if (i > 0 && time <= instants[i - 1]!.time) return { code: 'OUT_OF_ORDER', text: `instants[${i}].time is ${time} s, not after the ${instants[i - 1]!.time} s before it: list every instant once, in order of time.` };
  }
  for (const [p, player] of players.entries()) {
    const far = player.shifts.findIndex((shift) => shift >= instants.length);
    if (far >= 0) return { code: 'UNKNOWN_INSTANT', text: `players[${p}].shifts[${far}] is ${player.shifts[far]}, but the instants are 0 to ${instants.length - 1}: name one of them.` };
    const same = players.findIndex((other) => other.id === player.id || (other.desk === player.desk && other.seat === player.seat));
    if (same < p) return { code: 'SEAT_TAKEN', text: `players[${p}] has the id or the seat of players[${same}] (desk ${player.desk}, ${player.seat}): give each player an id and a seat of their own.` };
  }
  return undefined;
}

/** Reads the text of a plan file. Refuses with the place and what to do, first fault first. */
export function readStaggerFile(text: string): { problem: StaggerProblem } | { bad: BadPlan } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (cause) {
    return { bad: { code: 'NOT_JSON', text: `The file is not JSON: ${(cause as Error).message}. Correct it there.` } };
  }
  const parsed = File.safeParse(value);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return { bad: { code: 'BAD_VALUE', text: `${place(issue!.path)}: ${issue!.message}. Correct that value.` } };
  }
  const bad = wrongIn(parsed.data);
  return bad ? { bad } : { problem: parsed.data };
}

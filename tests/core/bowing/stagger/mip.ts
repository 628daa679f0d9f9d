import loader from 'highs';
import type { LegacyHighs } from 'highs';
import type { StaggerProblem } from '../../../../core/bowing/stagger/problem.ts';

/** Sums of variables with their factors, as the LP text writes them. */
const sum = (terms: readonly string[]) => terms.join(' + ');

/**
 * The whole problem as a mixed-integer programme, written from the wording of the rules and the table of costs and not from the
 * planner: x[p,i] = player p changes at instant i, y = one stroke from i to j with the number of changes before it even or odd,
 * z[p,w] = p changes within window w. Windows: every longest run of instants less than the rule's seconds apart.
 */
export function mipOf({ instants, duration, players, start, end }: StaggerProblem): string {
  const cost: string[] = [];
  const rows: string[] = [];
  const whole: string[] = [];
  const usable = instants.map((_, i) => i).filter((i) => instants[i]!.time > 1e-9 && instants[i]!.time < duration - 1e-9);
  const time = (node: number) => (node === -1 ? 0 : node === instants.length ? duration : instants[node]!.time);
  const windows = (seconds: number) => {
    const all = usable.map((i) => usable.filter((j) => j >= i && time(j) - time(i) < seconds - 1e-9));
    return all.filter((run, k) => k === 0 || run[run.length - 1] !== all[k - 1]![all[k - 1]!.length - 1]);
  };
  const crowd = windows(0.25);
  players.forEach((player, p) => {
    const partner = players.find((other, q) => q !== p && other.desk === player.desk);
    const into = new Map<string, string[]>();
    const outOf = new Map<string, string[]>();
    const push = (map: Map<string, string[]>, key: string, name: string) => map.set(key, [...(map.get(key) ?? []), name]);
    const nodes = [-1, ...usable, instants.length];
    for (const i of nodes) {
      for (const j of nodes) {
        const seconds = time(j) - time(i);
        if (j <= i || seconds > player.limit + 1e-9) continue;
        for (const odd of i === -1 ? [0] : [0, 1]) {
          const last = odd === 0 ? start : start === 'down' ? 'up' : 'down';
          if (j === instants.length && end !== null && last !== end) continue;
          const name = `y${p}_${i + 1}_${j}_${odd}`;
          whole.push(name);
          cost.push(`${Math.round(20 * ((seconds - player.comfortable) / player.comfortable) ** 2)} ${name}`);
          push(outOf, `${i} ${odd}`, name);
          push(into, j === instants.length ? 'end' : `${j} ${1 - odd}`, name);
        }
      }
    }
    rows.push(`${sum(outOf.get('-1 0') ?? ['none'])} = 1`);
    for (const i of usable) {
      for (const odd of [0, 1]) {
        const enter = into.get(`${i} ${odd}`) ?? [];
        const leave = outOf.get(`${i} ${odd}`) ?? [];
        if (enter.length + leave.length > 0) rows.push(`${[...enter, ...leave.map((name) => `-1 ${name}`)].join(' + ').replaceAll('+ -1', '- 1')} = 0`);
      }
      const entering = [0, 1].flatMap((odd) => into.get(`${i} ${odd}`) ?? []);
      rows.push(`${sum([...entering, '0 none'])} - x${p}_${i} = 0`);
      const { onBarline, onBeat, weight } = instants[i]!;
      const points = 10 + (onBarline ? 12 : 0) + (onBeat ? 6 : 0) + Math.round(20 * weight) + (player.shifts.length > 0 && !player.shifts.includes(i) ? 4 : 0) + (partner?.shifts.includes(i) ? 50 : 0);
      cost.push(`${points} x${p}_${i}`);
    }
    players.forEach((other, q) => {
      if (q <= p) return;
      if (other.desk === player.desk) {
        for (const i of usable) for (const j of usable) if (Math.abs(time(i) - time(j)) < 0.5 - 1e-9 || instants[i]!.subdivision === instants[j]!.subdivision) rows.push(`x${p}_${i} + x${q}_${j} <= 1`);
      } else if (other.seat === player.seat && Math.abs(other.desk - player.desk) === 1) {
        crowd.forEach((run, w) => {
          cost.push(`8 n${p}_${q}_${w}`);
          for (const i of run) for (const j of run) rows.push(`x${p}_${i} + x${q}_${j} - n${p}_${q}_${w} <= 1`);
        });
      }
    });
  });
  const allowed = Math.max(1, Math.floor(players.length / 8));
  for (const run of crowd) rows.push(`${sum(run.flatMap((i) => players.map((_, p) => `x${p}_${i}`)))} <= ${allowed}`);
  const share = Math.max(1, Math.ceil(players.reduce((all, { comfortable }) => all + 1 / comfortable, 0) - 1e-9));
  for (let second = 0; second <= duration; second++) {
    const here = usable.filter((i) => Math.floor(time(i) + 1e-9) === second);
    if (here.length === 0) continue;
    cost.push(`5 e${second}`);
    rows.push(`${sum(here.flatMap((i) => players.map((_, p) => `x${p}_${i}`)))} - e${second} <= ${share}`);
  }
  return `Minimize\n cost: ${cost.join('\n + ')}\nSubject To\n${rows.map((row, r) => ` r${r}: ${row.replaceAll(' + ', '\n + ')}`).join('\n')}\nBounds\n none = 0\nBinary\n ${whole.join('\n ')}\nEnd\n`;
}

export interface Certificate {
  /** proved: `cost` is the least there is · impossible: no plan holds all rules · open: the time was too short. */
  status: 'proved' | 'impossible' | 'open';
  cost: number;
  seconds: number;
}

/** HiGHS's word on a problem within so many seconds. */
export async function certify(problem: StaggerProblem, limit: number): Promise<Certificate> {
  // The package's types describe its CommonJS face; the module's default export is the loader itself.
  const highs = await (loader as unknown as () => Promise<LegacyHighs>)();
  const text = mipOf(problem);
  const from = performance.now();
  const solved = highs.solve(text, { time_limit: limit, mip_rel_gap: 0, mip_abs_gap: 0.5, output_flag: false });
  const status = solved.Status === 'Optimal' ? 'proved' : solved.Status === 'Infeasible' ? 'impossible' : 'open';
  return { status, cost: Math.round(solved.ObjectiveValue), seconds: (performance.now() - from) / 1000 };
}
